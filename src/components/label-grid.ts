/** Lets the labels be cut to any grid. Without this script they stand three across and eight down a page. */
const form = document.querySelector<HTMLFormElement>('#label-grid');
const labels = document.querySelector<HTMLElement>('.pot-labels');

if (form && labels) {
  const draw = () => {
    for (const { name, value, validity } of form.querySelectorAll('input')) {
      if (validity.valid) labels.style.setProperty(`--${name}`, value);
    }
  };
  form.addEventListener('input', draw);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
  });
  // An address may name the grid, as the one that the command prints from does.
  const asked = new URLSearchParams(location.search);
  for (const input of form.querySelectorAll('input')) {
    const wanted = asked.get(input.name);
    if (wanted !== null && /^\d{1,3}$/.test(wanted)) input.value = wanted;
  }
  form.hidden = false;
  draw();
}

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
  form.hidden = false;
  draw();
}

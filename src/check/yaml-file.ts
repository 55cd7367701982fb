import { readYaml, type Yaml, type YamlFault } from '../read/yaml.ts';
import type { Report } from './rule.ts';
import { reportYamlAliases } from './rules/yaml-aliases.ts';
import { reportYamlDuplicateKey } from './rules/yaml-duplicate-key.ts';
import { reportYamlSyntax } from './rules/yaml-syntax.ts';
import { reportYamlTab } from './rules/yaml-tab.ts';
import { textOf } from './text-file.ts';

/** After a first fault of syntax the rest are mostly its echoes. */
function withoutEchoes(faults: readonly YamlFault[]): YamlFault[] {
  const firstSyntax = faults.find(({ kind }) => kind !== 'duplicate key');
  const tab = faults.find(({ kind }) => kind === 'tab');
  return faults.filter((fault) => fault.kind === 'duplicate key' || fault === (tab ?? firstSyntax));
}

/** A YAML file read, or null with the reasons reported. */
export function yamlOf(file: string, bytes: Uint8Array, report: Report): Yaml | null {
  const text = textOf(file, bytes, report);
  if (text === null) return null;
  const yaml = readYaml(text);
  reportYamlFaults(file, yaml, report);
  return yaml.faults.length > 0 ? null : yaml;
}

/** Reports what is wrong with the YAML itself. */
export function reportYamlFaults(file: string, yaml: Yaml, report: Report): void {
  for (const fault of withoutEchoes(yaml.faults)) {
    if (fault.kind === 'duplicate key') reportYamlDuplicateKey(report, file, fault);
    else if (fault.kind === 'tab') reportYamlTab(report, file, fault);
    else if (fault.kind === 'aliases') reportYamlAliases(report, file, fault);
    else reportYamlSyntax(report, file, fault);
  }
}

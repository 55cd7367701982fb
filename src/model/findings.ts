import type { Findings } from './generated/findings.ts';

export type { Findings, Inference, Summary } from './generated/findings.ts';
export type TreatmentDescription = Findings['treatments'][number];
export type PositionEffects = Findings['position'][number];

/** A validator compiled from a schema: false where it refuses the value, its reasons then in `errors`. */
export interface Validator {
  (value: unknown): boolean;
  errors:
    | {
        keyword: string;
        params: Record<string, unknown>;
        instancePath: string;
        schemaPath: string;
      }[]
    | null;
}

export const trial: Validator;
export const site: Validator;
export const cultivars: Validator;
export const sheet: Validator;

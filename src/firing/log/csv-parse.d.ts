// The one function used of csv-parse's browser build. Its own types bring Node's with them, and the domain has none;
// tsconfig.domain.json points here instead.
export interface ParseOptions {
  readonly bom?: boolean;
  readonly delimiter?: string;
  readonly relax_column_count?: boolean;
  readonly relax_quotes?: boolean;
  readonly skip_empty_lines?: boolean;
  readonly trim?: boolean;
  /** Where a record ends in the file, counted from 1. */
  readonly on_record?: (record: string[], context: { readonly lines: number }) => unknown;
}
export declare function parse(text: string, options?: ParseOptions): string[][];

export function chromiumPath(force?: string): Promise<string>;
export const ARGS: string[];

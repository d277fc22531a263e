export function sourceStamp(root: string, paths: readonly string[]): string

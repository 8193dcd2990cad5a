/** What stands in a field of text; empty where there is no such field. */
export function textIn(entered: FormData, name: string): string {
  const given = entered.get(name);
  return typeof given === 'string' ? given : '';
}

/** Whether every number of a result, however deep, is finite and none is a negative zero. */
export function allFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value) && !Object.is(value, -0);
  return typeof value === 'object' && value !== null ? Object.values(value).every(allFinite) : true;
}

/** Leaves of a JSON document with their paths, and copies with one place replaced. */

/** Every leaf of a JSON document with its path. */
export function leaves(
  value: unknown,
  path = '',
): { readonly path: string; readonly value: unknown }[] {
  if (typeof value !== 'object' || value === null) return [{ path, value }];
  return Object.entries(value).flatMap(([key, inner]) =>
    leaves(inner, Array.isArray(value) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`),
  );
}

/** A copy with one place replaced, by a value or by what a function makes of the old one; only what lies on the way is copied. */
export function replaced(document: unknown, path: string, value: unknown): unknown {
  const inner = (at: unknown, keys: readonly string[]): unknown => {
    const [key, ...rest] = keys;
    if (key === undefined) return typeof value === 'function' ? value(at) : value;
    if (Array.isArray(at)) {
      const list = [...at];
      list[Number(key)] = inner(at[Number(key)], rest);
      return list;
    }
    const tree = at as Record<string, unknown>;
    return { ...tree, [key]: inner(tree[key], rest) };
  };
  return inner(
    document,
    path.split(/[.[\]]+/).filter((key) => key !== ''),
  );
}

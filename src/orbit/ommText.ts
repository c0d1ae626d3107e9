/** The three notations of an Orbit Mean-Elements Message, read to a look-up of keywords. */

import { DomainError } from '../errors.js';

/** Value of a keyword, or `undefined`. */
export type OmmFields = (keyword: string) => unknown;

/** Looks up keywords in an object or in text in JSON, key-value or XML notation. */
export function ommFields(omm: string | Readonly<Record<string, unknown>>): OmmFields {
  if (typeof omm === 'string') return textFields(omm);
  const message: unknown = Array.isArray(omm) ? omm[0] : omm;
  if (typeof message !== 'object' || message === null)
    throw new DomainError({
      code: message === undefined || message === null ? 'missing' : 'malformed',
      parameter: 'omm',
      received: omm,
      allowed: 'an Orbit Mean-Elements Message',
    });
  const record = message as Readonly<Record<string, unknown>>;
  return (keyword) => (Object.hasOwn(record, keyword) ? record[keyword] : undefined);
}

function textFields(text: string): OmmFields {
  const trimmed = text.trim();
  if (trimmed.startsWith('{') || trimmed.startsWith('[')) {
    let parsed: unknown;
    try {
      parsed = JSON.parse(trimmed);
    } catch {
      throw malformed(text, 'whole JSON text', 'was the end cut off?');
    }
    return ommFields(parsed as Readonly<Record<string, unknown>>);
  }
  const pairs = new Map<string, string>();
  const pattern = trimmed.startsWith('<')
    ? /<([A-Z_0-9]+)[^<>]*>([^<]*)<\/\1>/g
    : /^[ \t]*([A-Z_0-9]+)[ \t]*=[ \t]*([^\r\n[]*)/gm;
  for (const [, keyword = '', value = ''] of trimmed.matchAll(pattern))
    if (!pairs.has(keyword)) pairs.set(keyword, value.trim());
  if (pairs.size === 0)
    throw malformed(text, 'an Orbit Mean-Elements Message in JSON, key-value or XML notation');
  return (keyword) => pairs.get(keyword);
}

function malformed(received: string, allowed: string, slip?: string): DomainError {
  return new DomainError({ code: 'malformed', parameter: 'omm', received, allowed, slip });
}

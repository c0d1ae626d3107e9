/**
 * A small evaluator of items and tests in QTI, from the rules of the specification and apart from the code that writes
 * them: IMS Question and Test Interoperability 2.1 (final, 2012), Assessment Test, Section and Item Information Model, on
 * response processing, expressions with NULL, and outcome processing; written from memory of it. Any element
 * beyond these is refused.
 */

import { readXml, type XmlElement } from './xml.js';

/** A value of cardinality single; none for NULL. */
type Value = number | string | boolean | undefined;
type Variables = Map<string, Value>;

const attribute = (element: XmlElement, name: string): string => {
  const value = element.attributes[name];
  if (value === undefined) throw new Error(`${element.name} has no ${name}`);
  return value;
};
const named = (element: XmlElement, name: string) =>
  element.children.filter((child) => child.name === name);

/** A text as a value of a base type; a text that is no number is NULL, as is an empty response. */
function typed(text: string, baseType: string): Value {
  if (baseType === 'float' || baseType === 'integer') {
    const fits = baseType === 'float' ? /^[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?$/ : /^[-+]?\d+$/;
    return fits.test(text.trim()) ? Number(text) : undefined;
  }
  if (baseType === 'boolean') return text === 'true';
  if (baseType === 'identifier' || baseType === 'string') return text === '' ? undefined : text;
  throw new Error(`base type ${baseType}`);
}

/** A comparison is NULL where one side is. */
function compared(values: readonly Value[], holds: (a: number, b: number) => boolean): Value {
  const [a, b] = values;
  if (a === undefined || b === undefined) return undefined;
  if (typeof a !== 'number' || typeof b !== 'number') throw new Error('a comparison of no numbers');
  return holds(a, b);
}

function evaluated(element: XmlElement, variables: Variables): Value {
  const values = () => element.children.map((child) => evaluated(child, variables));
  switch (element.name) {
    case 'baseValue':
      return typed(element.text ?? '', attribute(element, 'baseType'));
    case 'variable': {
      const identifier = attribute(element, 'identifier');
      if (!variables.has(identifier)) throw new Error(`${identifier} was not declared`);
      return variables.get(identifier);
    }
    case 'gte':
      return compared(values(), (a, b) => a >= b);
    case 'lte':
      return compared(values(), (a, b) => a <= b);
    case 'and': {
      // False wins over NULL, NULL over true.
      const all = values();
      return all.includes(false) ? false : all.includes(undefined) ? undefined : true;
    }
    case 'isNull':
      return values()[0] === undefined;
    case 'not': {
      const [value] = values();
      return value === undefined ? undefined : !value;
    }
    default:
      throw new Error(`expression ${element.name}`);
  }
}

/** Runs rules: the branch of a condition counts only where its expression is true, NULL is not. */
function run(rules: readonly XmlElement[], variables: Variables): void {
  for (const rule of rules) {
    if (rule.name === 'setOutcomeValue') {
      const [expression] = rule.children;
      if (!expression) throw new Error('setOutcomeValue without an expression');
      variables.set(attribute(rule, 'identifier'), evaluated(expression, variables));
    } else if (rule.name === 'responseCondition') {
      for (const branch of rule.children) {
        const otherwise = branch.name === 'responseElse';
        if (!otherwise && !['responseIf', 'responseElseIf'].includes(branch.name))
          throw new Error(`branch ${branch.name}`);
        const [condition, ...then] = otherwise ? [undefined, ...branch.children] : branch.children;
        if (condition && evaluated(condition, variables) !== true) continue;
        run(then as readonly XmlElement[], variables);
        break;
      }
    } else throw new Error(`rule ${rule.name}`);
  }
}

/** Outcomes and feedback of an item for what was typed into its only field. */
export function playedItem(content: string, response: string) {
  const item = readXml(content);
  const variables: Variables = new Map();
  const declarations = named(item, 'responseDeclaration');
  const [declaration] = declarations;
  if (!declaration || declarations.length !== 1) throw new Error('one response was expected');
  for (const outcome of named(item, 'outcomeDeclaration')) {
    const value = named(outcome, 'defaultValue')[0]?.children[0]?.text;
    variables.set(
      attribute(outcome, 'identifier'),
      value === undefined ? undefined : typed(value, attribute(outcome, 'baseType')),
    );
  }
  variables.set(
    attribute(declaration, 'identifier'),
    typed(response, attribute(declaration, 'baseType')),
  );
  run(
    named(item, 'responseProcessing').flatMap(({ children }) => children),
    variables,
  );
  const feedback = named(item, 'modalFeedback').filter(
    (each) =>
      (variables.get(attribute(each, 'outcomeIdentifier')) === attribute(each, 'identifier')) ===
      (attribute(each, 'showHide') === 'show'),
  );
  return { score: variables.get('SCORE'), feedback: feedback.length };
}

/** Score of a whole test: the sum of a variable over its items, as its outcome processing says. */
export function playedTest(content: string, scoreOf: (href: string) => Value): Value {
  const test = readXml(content);
  const references: string[] = [];
  const walk = (element: XmlElement): void => {
    if (element.name === 'assessmentItemRef') references.push(attribute(element, 'href'));
    element.children.forEach(walk);
  };
  walk(test);
  const [rule] = named(test, 'outcomeProcessing').flatMap(({ children }) => children);
  const [sum] = rule?.name === 'setOutcomeValue' ? rule.children : [];
  const [of] = sum?.name === 'sum' ? sum.children : [];
  if (of?.name !== 'testVariables' || attribute(of, 'variableIdentifier') !== 'SCORE')
    throw new Error('the sum of SCORE over the items was expected');
  const scores = references.map(scoreOf);
  return scores.some((score) => typeof score !== 'number')
    ? undefined
    : scores.reduce<number>((total, score) => total + Number(score), 0);
}

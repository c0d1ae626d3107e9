/** Exercises as items of IMS Question and Test Interoperability, version 2.2, which learning systems read. */

import { printedUnit } from '../print/units.js';
import type { Exercise } from './exercise.js';
import { solutionLines } from './solutionLines.js';
import type { Worksheet } from './worksheet.js';

/** A file of the package: path and content. */
export interface PackageFile {
  readonly path: string;
  readonly content: string;
}

/** Text made harmless in XML. */
export function escapedXml(text: string): string {
  return text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

const ITEM_NAMESPACE = 'http://www.imsglobal.org/xsd/imsqti_v2p2';

/** A number without the noise of its last binary digits. */
const plain = (value: number): string => String(Number(value.toPrecision(12)));

/** All items in one section of one test, which players of whole tests want. */
function assessmentTest(
  sheet: Worksheet,
  items: readonly { readonly identifier: string; readonly path: string }[],
): string {
  const references = items
    .map(
      ({ identifier, path }) =>
        `      <assessmentItemRef identifier="${identifier}" href="${path}"/>`,
    )
    .join('\n');
  return `<?xml version="1.0" encoding="UTF-8"?>
<assessmentTest xmlns="${ITEM_NAMESPACE}" identifier="test-${Math.trunc(sheet.seed)}" title="${escapedXml(sheet.title)}">
  <outcomeDeclaration identifier="SCORE" cardinality="single" baseType="float"><defaultValue><value>0</value></defaultValue></outcomeDeclaration>
  <testPart identifier="part-1" navigationMode="nonlinear" submissionMode="individual">
    <assessmentSection identifier="section-1" title="${escapedXml(sheet.title)}" visible="true">
${references}
    </assessmentSection>
  </testPart>
  <outcomeProcessing>
    <setOutcomeValue identifier="SCORE"><sum><testVariables variableIdentifier="SCORE"/></sum></setOutcomeValue>
  </outcomeProcessing>
</assessmentTest>
`;
}

/** One exercise as an item: a typed number, right within the tolerance, with the hints as feedback. */
function item(exercise: Exercise, identifier: string): string {
  const { answer, tolerance, decimals, text, unit, solution } = exercise;
  const steps = solutionLines(exercise)
    .map((line) => `<li>${escapedXml(line)}</li>`)
    .join('');
  return `<?xml version="1.0" encoding="UTF-8"?>
<assessmentItem xmlns="${ITEM_NAMESPACE}" identifier="${identifier}" title="${escapedXml(solution.title)}" adaptive="false" timeDependent="false">
  <responseDeclaration identifier="RESPONSE" cardinality="single" baseType="float">
    <correctResponse><value>${answer.toFixed(decimals)}</value></correctResponse>
  </responseDeclaration>
  <outcomeDeclaration identifier="SCORE" cardinality="single" baseType="float"><defaultValue><value>0</value></defaultValue></outcomeDeclaration>
  <outcomeDeclaration identifier="FEEDBACK" cardinality="single" baseType="identifier"><defaultValue><value>none</value></defaultValue></outcomeDeclaration>
  <itemBody>
    <p>${escapedXml(text)}</p>
    <p><textEntryInteraction responseIdentifier="RESPONSE" expectedLength="12"/> ${escapedXml(printedUnit(unit))}</p>
  </itemBody>
  <responseProcessing>
    <responseCondition>
      <responseIf>
        <and>
          <gte><variable identifier="RESPONSE"/><baseValue baseType="float">${plain(answer - tolerance)}</baseValue></gte>
          <lte><variable identifier="RESPONSE"/><baseValue baseType="float">${plain(answer + tolerance)}</baseValue></lte>
        </and>
        <setOutcomeValue identifier="SCORE"><baseValue baseType="float">1</baseValue></setOutcomeValue>
      </responseIf>
    </responseCondition>
    <setOutcomeValue identifier="FEEDBACK"><baseValue baseType="identifier">solution</baseValue></setOutcomeValue>
  </responseProcessing>
  <modalFeedback outcomeIdentifier="FEEDBACK" identifier="solution" showHide="show"><ol>${steps}</ol></modalFeedback>
</assessmentItem>
`;
}

/**
 * A worksheet as the files of an IMS content package with one QTI 2.2 item for each exercise and one test of all of them.
 *
 * An answer is right from `answer - tolerance` to `answer + tolerance`; the comparison is written with `gte` and `lte`, because
 * some players pass over the tolerance of `equal`.
 *
 * @returns Files to be put into one ZIP archive: `imsmanifest.xml`, `assessment.xml` and an item each under `items/`.
 *
 * Source: IMS Question and Test Interoperability 2.2, Assessment Test, Section and Item Information Model; IMS Content
 * Packaging 1.2.
 * @example
 * ```ts
 * import { worksheet, worksheetQti } from 'slantpath/teaching';
 * worksheetQti(worksheet({ seed: 3, count: 2 })).map(({ path }) => path); // => ['imsmanifest.xml', 'assessment.xml', 'items/exercise-1.xml', 'items/exercise-2.xml']
 * ```
 */
export function worksheetQti(sheet: Worksheet): readonly PackageFile[] {
  const items = sheet.exercises.map((exercise, index) => {
    const identifier = `exercise-${index + 1}`;
    return { identifier, path: `items/${identifier}.xml`, content: item(exercise, identifier) };
  });
  const resources = items
    .map(
      ({ identifier, path }) =>
        `    <resource identifier="${identifier}" type="imsqti_item_xmlv2p2" href="${path}"><file href="${path}"/></resource>`,
    )
    .join('\n');
  const whole = { path: 'assessment.xml', content: assessmentTest(sheet, items) };
  const manifest = `<?xml version="1.0" encoding="UTF-8"?>
<manifest xmlns="http://www.imsglobal.org/xsd/imscp_v1p1" identifier="worksheet-${Math.trunc(sheet.seed)}">
  <metadata><schema>QTIv2.2 Package</schema><schemaversion>1.0.0</schemaversion></metadata>
  <organizations/>
  <resources>
    <resource identifier="assessment" type="imsqti_test_xmlv2p2" href="${whole.path}"><file href="${whole.path}"/>${items.map(({ identifier }) => `<dependency identifierref="${identifier}"/>`).join('')}</resource>
${resources}
  </resources>
</manifest>
`;
  return [
    { path: 'imsmanifest.xml', content: manifest },
    whole,
    ...items.map(({ path, content }) => ({ path, content })),
  ];
}

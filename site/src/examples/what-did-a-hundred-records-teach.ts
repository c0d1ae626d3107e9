/** What did a hundred records teach? EIRP of a region from readings, drift of a site, acceptance by sampling. */

import {
  type AcceptableQualityPercent,
  acceptanceProbability,
  badRatioAccepted,
  samplingPlan,
  shareInterval,
} from 'slantpath/acceptance';
import { footprintCorrection, siteDrift } from 'slantpath/experience';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, place, rows, text } from '../lib/inputs/inputs.js';
import { linesOf } from '../lib/inputs/pasted.js';
import { shown, typed } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';

const LEVELS = {
  '0.65': '0.65 %',
  '1': '1 %',
  '1.5': '1.5 %',
  '2.5': '2.5 %',
  '4': '4 %',
  '6.5': '6.5 %',
};

/** A hundred invented records: twenty-five villages with four each, more than planned in the east. */
const RECORDS = Array.from({ length: 100 }, (_, index) => {
  const village = index % 25;
  const latitude = 45.6 + 0.4 * Math.floor(village / 5) + 0.1 * (village % 3);
  const longitude = 8.2 + 0.6 * (village % 5) + 0.1 * (village % 2);
  // A fixed scatter of some tenths of a decibel, the same on every page.
  const scatter = ((index * 37) % 11) / 10 - 0.5;
  const excess = 0.4 + 0.35 * (longitude - 9.4) - 0.2 * (latitude - 46.4) + scatter;
  return `${latitude.toFixed(1)}; ${longitude.toFixed(1)}; ${excess.toFixed(1)}`;
}).join('\n');

export default defineExample({
  usual: ['records', 'place', 'lotSize', 'acceptableQualityPercent'],
  inputs: {
    records: text({
      label: 'Records',
      lines: 6,
      hint: 'One on each line: latitude; longitude; level read less level planned in dB. Offsets of units and meters taken off before.',
      value: RECORDS,
    }),
    place: place({
      label: 'The next installation',
      value: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
    }),
    lotSize: number({ label: 'Installations in the lot', value: 300, step: 10, min: 2 }),
    acceptableQualityPercent: choice({
      label: 'Share of bad ones that is acceptable',
      options: LEVELS,
      value: '2.5',
    }),
    badCount: number({ label: 'Bad ones found in the sample', value: 1, step: 1, min: 0 }),
    readingUncertaintyDb: number({
      label: 'Standard uncertainty of one record',
      unit: 'dB',
      value: 0.5,
      step: 0.1,
      min: 0.05,
      max: 5,
    }),
    visits: rows({
      label: 'Visits to one site',
      columns: {
        at: { label: 'Day', text: true },
        levelDb: { label: 'C/N', unit: 'dB', step: 0.1 },
      },
      value: [
        { at: '2023-05-01', levelDb: 14.9 },
        { at: '2024-05-01', levelDb: 14.5 },
        { at: '2025-05-01', levelDb: 14.15 },
        { at: '2026-05-01', levelDb: 13.75 },
      ],
      add: { at: '2027-05-01', levelDb: 13.4 },
    }),
    allowedLossDb: number({
      label: 'Loss before it is peaked again',
      unit: 'dB',
      value: 1.5,
      step: 0.1,
      min: 0.1,
    }),
  },
  fieldOf: (parameter) =>
    /^readings/.test(parameter)
      ? 'records'
      : ({ count: 'badCount', of: 'lotSize' } as Readonly<Record<string, string>>)[parameter],
  compute: ({
    records,
    place: { latitudeDeg, longitudeDeg },
    lotSize,
    acceptableQualityPercent,
    badCount,
    readingUncertaintyDb,
    visits,
    allowedLossDb,
  }) => {
    const readings = linesOf(records).map(([latitude = '', longitude = '', excess = '']) => ({
      latitudeDeg: typed(latitude),
      longitudeDeg: typed(longitude),
      excessDb: typed(excess),
      standardUncertaintyDb: readingUncertaintyDb,
    }));
    const learnt = footprintCorrection(readings);
    const longitudes = readings.map((reading) => reading.longitudeDeg);
    const [west, east] = [Math.min(...longitudes), Math.max(...longitudes)];
    const wide = Math.max(east - west, 1);
    const plan = samplingPlan({
      lotSize,
      acceptableQualityPercent: Number(acceptableQualityPercent) as AcceptableQualityPercent,
    });
    const { sampleSize, acceptanceNumber } = plan;
    const known = acceptanceNumber < sampleSize;
    return {
      readings,
      here: learnt.at({ latitudeDeg, longitudeDeg }),
      meanDb: learnt.meanDb,
      standardDeviationDb: learnt.standardDeviationDb,
      correlationKm: learnt.correlationKm,
      cells: learnt.cells,
      along: Array.from({ length: 49 }, (_, i) => west - wide + (i / 48) * 3 * wide).map((at) => ({
        longitudeDeg: at,
        ...learnt.at({ latitudeDeg, longitudeDeg: at }),
      })),
      drift: siteDrift({ visits, allowedLossDb }),
      plan,
      safeRatio: known
        ? badRatioAccepted({ sampleSize, acceptanceNumber, probabilityRatio: 0.95 })
        : 1,
      riskRatio: known
        ? badRatioAccepted({ sampleSize, acceptanceNumber, probabilityRatio: 0.1 })
        : 1,
      characteristic: Array.from({ length: 61 }, (_, i) => i / 300).map((badRatio) => ({
        x: 100 * badRatio,
        y: 100 * acceptanceProbability({ sampleSize, acceptanceNumber, badRatio }),
      })),
      share: shareInterval({ count: badCount, of: sampleSize }),
    };
  },
  view: (
    {
      readings,
      here,
      meanDb,
      standardDeviationDb,
      correlationKm,
      cells,
      along,
      drift,
      plan,
      safeRatio,
      riskRatio,
      characteristic,
      share,
    },
    { badCount },
  ) => {
    const correction = shown(here.correctionDb, 1);
    const expanded = shown(2 * here.standardUncertaintyDb, 1);
    return {
      says: here.beyondReadings
        ? `Nobody has read near there: ${correction} ± ${expanded} dB is the mean of the region, and no more.`
        : `At the next installation, add ${correction} ± ${expanded} dB to the planned EIRP.`,
      outputs: [
        {
          label: 'Correction of the EIRP there',
          value: here.correctionDb,
          unit: 'dB',
          note: `± ${expanded} dB (k = 2); the nearest record lies ${shown(here.nearestKm, 0)} km away`,
          main: true,
        },
        {
          label: 'To look at',
          value: `${plan.sampleSize}`,
          note: `drawn by chance; accepted with ${plan.acceptanceNumber} bad ones or fewer`,
          main: true,
        },
        { label: 'Mean of the region', value: meanDb, unit: 'dB' },
        {
          label: 'Scatter over the region',
          value: standardDeviationDb,
          unit: 'dB',
          note: 'standard deviation',
        },
        { label: 'Alike over', value: correlationKm, unit: 'km', digits: 0 },
        {
          label: 'Change at the site',
          value: drift.perYearDb,
          unit: 'dB',
          note:
            drift.kind === 'drift'
              ? `a year, ± ${shown(drift.halfWidth95Db, 2)} dB (95 %)`
              : `a year, which can be chance: ± ${shown(drift.halfWidth95Db, 2)} dB (95 %)`,
        },
        ...(drift.kind === 'drift' && drift.yearsLeft !== undefined
          ? [{ label: 'To be peaked again in', value: drift.yearsLeft, unit: 'years', digits: 1 }]
          : []),
        {
          label: 'Bad ones in the lot',
          value: 100 * share.ratio,
          unit: '%',
          digits: 1,
          note: `${shown(100 * share.fromRatio, 1)} to ${shown(100 * share.toRatio, 1)} % (95 %)`,
        },
      ],
      figures: [
        linePlot({
          title: 'Correction along the parallel of the next installation, with what was read',
          x: { label: 'Longitude', unit: '°', digits: 1 },
          y: { label: 'Read less planned', unit: 'dB', digits: 1 },
          series: [
            {
              label: 'correction',
              points: along.map((at) => ({ x: at.longitudeDeg, y: at.correctionDb })),
            },
            {
              label: 'with twice its uncertainty',
              points: [
                ...along.map((at) => ({
                  x: at.longitudeDeg,
                  y: at.correctionDb + 2 * at.standardUncertaintyDb,
                })),
                { x: Number.NaN, y: Number.NaN },
                ...along.map((at) => ({
                  x: at.longitudeDeg,
                  y: at.correctionDb - 2 * at.standardUncertaintyDb,
                })),
              ],
            },
            {
              label: 'records of all latitudes',
              style: 'samples',
              points: readings.map(({ longitudeDeg, excessDb }) => ({
                x: longitudeDeg,
                y: excessDb,
              })),
            },
          ],
          table: {
            caption: 'Correction along the parallel of the next installation, with what was read',
            columns: ['Longitude / °', 'Correction / dB', 'Standard uncertainty / dB'],
            rows: along
              .filter((_, index) => index % 4 === 0)
              .map((at) => [
                shown(at.longitudeDeg, 1),
                shown(at.correctionDb, 2),
                shown(at.standardUncertaintyDb, 2),
              ]),
          },
        }),
        linePlot({
          title: 'Operating characteristic of the sampling plan',
          x: { label: 'Bad ones in the lot', unit: '%', digits: 1, min: 0, max: 20 },
          y: { label: 'Probability of acceptance', unit: '%', digits: 1, min: 0, max: 100 },
          series: [{ label: 'accepted', points: characteristic }],
          rules: [
            { axis: 'y', at: 95, label: '95 %' },
            { axis: 'y', at: 10, label: '10 %' },
          ],
        }),
      ],
      tables: [
        {
          caption: 'What the plan lets through',
          columns: ['Bad ones in the lot / %', 'Accepted with probability / %'],
          rows: [
            [shown(100 * safeRatio, 2), '95'],
            [shown(100 * riskRatio, 2), '10'],
          ],
        },
      ],
      notes: [
        `${readings.length} records in ${cells} places.`,
        badCount > plan.acceptanceNumber
          ? 'More bad ones than the plan accepts: the lot is not accepted.'
          : 'No more bad ones than the plan accepts: the lot is accepted.',
      ],
    };
  },
  hand: ({ allowedLossDb }, { readings, drift, share, plan }) => {
    const total = readings.reduce((sum, { excessDb }) => sum + excessDb, 0);
    return [
      {
        says: 'the plain mean of all records',
        formula: 'm = \\frac{1}{n} \\cdot \\sum d',
        put: `m = \\frac{${shown(total, 1)}}{${readings.length}}`,
        result: `${shown(total / readings.length, 2)} dB`,
      },
      {
        says: 'the share of bad ones in the sample',
        formula: 'p = \\frac{k}{n}',
        put: `p = \\frac{${shown(share.ratio * plan.sampleSize, 0)}}{${plan.sampleSize}}`,
        result: `${shown(100 * share.ratio, 1)} %`,
      },
      ...(drift.kind === 'drift' && drift.yearsLeft !== undefined && drift.yearsLeft > 0
        ? [
            {
              says: 'years from the first visit until the allowed loss is used up',
              formula: 't = \\frac{a}{|b|}',
              put: `t = \\frac{${shown(allowedLossDb, 1)}}{${shown(-drift.perYearDb, 3)}}`,
              result: shown(allowedLossDb / -drift.perYearDb, 1),
            },
          ]
        : []),
    ];
  },
  code: ({
    records,
    place: { latitudeDeg, longitudeDeg },
    readingUncertaintyDb,
    lotSize,
    acceptableQualityPercent,
  }) =>
    `import { samplingPlan } from 'slantpath/acceptance';
import { footprintCorrection } from 'slantpath/experience';

const records = ${literal(
      linesOf(records)
        .slice(0, 30)
        .map((cells) => cells.map(typed)),
    )};
const learnt = footprintCorrection(
  records.map(([latitudeDeg = 0, longitudeDeg = 0, excessDb = 0]) => ({
    latitudeDeg,
    longitudeDeg,
    excessDb,
    standardUncertaintyDb: ${readingUncertaintyDb},
  })),
);
console.log(learnt.at(${literal({ latitudeDeg, longitudeDeg })}));
console.log(
  samplingPlan({ lotSize: ${lotSize}, acceptableQualityPercent: ${acceptableQualityPercent} }),
);
`,
});

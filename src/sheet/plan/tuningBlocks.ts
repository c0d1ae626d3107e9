/** Tuning, levels at the antenna and behind it, supply, and what is sent. */

import type { OutletPlan, SignalPlan } from '../../job/index.js';
import { BLANK, type SheetBlock, section, tableOf } from '../paper/blocks.js';
import type { Speech } from '../paper/speech.js';

/** What to set on the instrument. */
export function tuningBlocks(speech: Speech): readonly SheetBlock[] {
  const { plan, words, fixed, plain } = speech;
  const { columns } = words;
  if (plan.tuning.length === 0) return [];
  // Where receivers ask by messages, these carry polarization and band.
  const byCommand = plan.stacking?.kind === 'user-bands';
  return [
    section(words.sections.tuning),
    tableOf(plan.tuning, [
      [columns.slot, ({ slot }) => slot, 'left'],
      [columns.carrier, ({ carrier }) => carrier, 'left'],
      [columns.frequencyGHz, ({ frequencyGHz }) => plain(frequencyGHz)],
      [columns.polarization, (t) => words.codes.polarizations[t.polarization], 'left'],
      [columns.unit, ({ unit }) => unit ?? '-', 'left'],
      [columns.frequencyMHz, (t) => fixed(t.intermediateFrequencyMHz, 0)],
      [columns.voltageV, ({ voltageV }) => plain(voltageV)],
      byCommand
        ? null
        : [columns.tone, ({ tone }) => (tone === null ? '-' : tone ? words.on : words.off), 'left'],
      [
        columns.input,
        (t) => [t.into, t.input].filter((name) => name !== null).join(' ') || '-',
        'left',
      ],
    ]),
    ...oscillatorBlocks(speech),
    ...(plan.tuning.some(({ inverted }) => inverted) ? [words.inverted] : []),
  ];
}

/** Local oscillators, images, and what the receivers take. */
function oscillatorBlocks({ job, plan, words, fixed, plain }: Speech): readonly SheetBlock[] {
  const { columns, codes } = words;
  const known = plan.tuning.filter(({ inRange }) => inRange !== null);
  if (known.length === 0) return [];
  const range = (['lowestMHz', 'highestMHz'] as const).map((end) => ({
    said: job.tuner?.[end] !== undefined,
    taken:
      job.tuner?.[end] ?? plan.assumptions.find(({ field }) => field === `tuner.${end}`)?.taken,
  }));
  const [from, to] = range.map(({ taken }) => (typeof taken === 'number' ? plain(taken) : '-'));
  return [
    tableOf(known, [
      [columns.slot, ({ slot }) => slot, 'left'],
      [columns.carrier, ({ carrier }) => carrier, 'left'],
      [columns.oscillatorGHz, ({ localOscillatorGHz }) => plain(localOscillatorGHz)],
      [columns.oscillatorKHz, ({ oscillatorErrorKHz }) => fixed(oscillatorErrorKHz, 0)],
      [columns.imageGHz, ({ imageFrequencyGHz }) => plain(imageFrequencyGHz)],
      [columns.inRange, ({ inRange }) => (inRange === null ? '-' : codes.inRange[inRange]), 'left'],
    ]),
    words.tunerRange(
      from ?? '-',
      to ?? '-',
      range.every(({ said }) => said),
    ),
  ];
}

/** A value with twice its standard uncertainty. */
const about = ({ fixed }: Speech, value: number, standardUncertainty: number): string =>
  `${fixed(value, 1)} ± ${fixed(2 * standardUncertainty, 1)}`;

/** What to expect at the antenna; `toFill` leaves room for what is read. */
export function antennaBlocks(speech: Speech, toFill: boolean): readonly SheetBlock[] {
  const { plan, words, fixed } = speech;
  const { columns } = words;
  if (plan.signals.length === 0) return [];
  const loss = (signal: SignalPlan) =>
    plan.mounts
      .flatMap(({ losses }) => losses)
      .find(({ slot, carrier }) => slot === signal.slot && carrier === signal.carrier);
  const beyond = plan.signals.some((signal) => loss(signal)?.beyondModel === true);
  return [
    section(words.sections.antenna),
    tableOf<SignalPlan>(plan.signals, [
      [columns.slot, ({ slot }) => slot, 'left'],
      [columns.carrier, ({ carrier }) => carrier, 'left'],
      [
        columns.mountLossDb,
        (s) => `${fixed(loss(s)?.lossDb, 2)}${loss(s)?.beyondModel === true ? ' !' : ''}`,
      ],
      [columns.levelDbuv, (s) => about(speech, s.levelDbuv, s.levelStandardUncertaintyDb)],
      toFill ? [columns.read, () => BLANK] : null,
      [
        columns.carrierToNoiseDb,
        (s) => about(speech, s.carrierToNoiseDb, s.ratioStandardUncertaintyDb),
      ],
      toFill ? [columns.read, () => BLANK] : null,
      [columns.neededDb, ({ requiredDb }) => fixed(requiredDb, 1)],
    ]),
    `${words.expectedSense}${beyond ? ` ! ${words.beyondModel}.` : ''}`,
  ];
}

/** What to expect at the outlets; `toFill` leaves room for what is read. */
export function outletBlocks(speech: Speech, toFill: boolean): readonly SheetBlock[] {
  const { plan, words, fixed } = speech;
  const { columns } = words;
  if (plan.outlets.length === 0) return [];
  return [
    section(words.sections.outlets),
    tableOf<OutletPlan>(plan.outlets, [
      [columns.outlet, ({ outlet }) => outlet, 'left'],
      [columns.slot, ({ slot }) => slot, 'left'],
      [columns.carrier, ({ carrier }) => carrier, 'left'],
      [columns.frequencyMHz, (o) => fixed(o.intermediateFrequencyMHz, 0)],
      [columns.levelDbuv, ({ levelDbuv }) => fixed(levelDbuv, 1)],
      [columns.limits, ({ limits }) => span(speech, limits.minimumDbuv, limits.maximumDbuv)],
      toFill ? [columns.read, () => BLANK] : null,
      [columns.carrierToNoiseDb, (o) => fixed(o.carrierToNoiseDb, 1)],
      [columns.least, ({ limits }) => fixed(limits.minimumRatioDb, 1)],
      toFill ? [columns.read, () => BLANK] : null,
    ]),
  ];
}

/** A range from least to most, where either may be missing. */
export function span(
  { fixed, words }: Speech,
  from: number | null,
  to: number | null,
  decimals = 0,
): string {
  if (from === null && to === null) return '-';
  if (to === null) return words.atLeast(fixed(from, decimals));
  return from === null
    ? words.atMost(fixed(to, decimals))
    : `${fixed(from, decimals)}–${fixed(to, decimals)}`;
}

/** Voltage that arrives at the units. */
export function supplyBlocks(speech: Speech): readonly SheetBlock[] {
  const { plan, words, fixed } = speech;
  const { columns } = words;
  if (plan.supplies.length === 0) return [];
  return [
    section(words.sections.supply),
    tableOf(plan.supplies, [
      [columns.outlet, ({ testPoint }) => testPoint, 'left'],
      [columns.unit, ({ unit }) => unit, 'left'],
      [columns.fedV, ({ voltageV }) => fixed(voltageV, 0)],
      [columns.currentA, ({ currentA }) => fixed(currentA, 2)],
      [columns.arrivesV, ({ unitVoltageV }) => fixed(unitVoltageV, 1)],
      [columns.verdict, ({ kind }) => words.codes.supplies[kind], 'left'],
      [columns.at, ({ at }) => at ?? '-', 'left'],
    ]),
  ];
}

/** What a two-way terminal sends, and how far to keep out of its beam. */
export function transmitBlocks(speech: Speech): readonly SheetBlock[] {
  const { plan, words, fixed, signed, plain } = speech;
  const { columns } = words;
  if (plan.transmit.length === 0) return [];
  return [
    section(words.sections.transmit),
    tableOf(plan.transmit, [
      [columns.slot, ({ slot }) => slot, 'left'],
      [columns.carrier, ({ carrier }) => carrier, 'left'],
      [columns.frequencyGHz, ({ frequencyGHz }) => plain(frequencyGHz)],
      [columns.powerW, ({ powerW }) => fixed(powerW, 2)],
      [columns.eirpDbw, ({ eirpDbw }) => fixed(eirpDbw, 1)],
      [columns.backOffDb, ({ outputBackOffDb }) => fixed(outputBackOffDb, 1)],
      [columns.maskDb, ({ mask }) => signed(mask?.headroomDb, 1)],
      [
        columns.keepOutM,
        ({ keepOutM }) =>
          keepOutM > 0 ? fixed(Math.ceil(10 * keepOutM) / 10, 1) : words.limitNotReached,
      ],
    ]),
    ...new Set(
      plan.transmit.map(({ exposureGroup, exposureLimitWPerM2 }) =>
        words.keepOut(words.codes.exposureGroups[exposureGroup], fixed(exposureLimitWPerM2, 0)),
      ),
    ),
  ];
}

/** Rain, margins and the promise. */
export function rainBlocks(speech: Speech): readonly SheetBlock[] {
  const { job, plan, words, fixed, plain } = speech;
  const { columns } = words;
  const { rain } = plan;
  const promised = plan.signals.flatMap((signal) =>
    signal.promise ? [{ ...signal, promise: signal.promise }] : [],
  );
  if (!rain && promised.length === 0) return [];
  const blocks: SheetBlock[] = [section(words.sections.rain)];
  if (rain)
    blocks.push(
      words.rain(
        fixed(rain.rainRate001MmPerH, 1),
        fixed(200 * rain.rainRateStandardUncertaintyRatio, 0),
        fixed(rain.rainHeightKm, 2),
        `${words.codes.rainSources[rain.source]}; ${rain.editions.join(', ')}`,
      ),
    );
  const percent = job.target?.exceededPercent;
  if (percent !== undefined) blocks.push(words.promise(plain(percent)));
  if (promised.length > 0)
    blocks.push(
      tableOf(promised, [
        [columns.slot, ({ slot }) => slot, 'left'],
        [columns.carrier, ({ carrier }) => carrier, 'left'],
        [columns.marginClear, ({ clearMarginDb }) => fixed(clearMarginDb, 1)],
        [
          columns.fadeDb,
          ({ promise: { fade } }) => about(speech, fade.attenuationDb, fade.standardUncertaintyDb),
        ],
        [columns.marginFaded, ({ promise }) => fixed(promise.fadedMarginDb, 1)],
        [columns.hoursAYear, ({ promise }) => hours(speech, promise)],
        [columns.kept, ({ promise }) => `${fixed(100 * promise.keptProbabilityRatio, 0)} %`],
      ]),
    );
  if (rain?.wetFeed) {
    const { filmMm, frequencyGHz, lossDb, mostDb } = rain.wetFeed;
    blocks.push(
      words.wetFeed(
        fixed(lossDb, 1),
        fixed(mostDb, 1),
        fixed(filmMm, 2),
        plain(frequencyGHz),
        fixed(rain.rainRate001MmPerH, 1),
      ),
    );
  }
  return blocks;
}

/** Hours a year without reception; the model ends at 0.001 and 50 per cent. A year has 8766 hours. */
function hours(
  { words, fixed }: Speech,
  { exceededPercent, availability }: NonNullable<SignalPlan['promise']>,
): string {
  const text = fixed(exceededPercent * 87.66, 1);
  if (availability === 'better-than') return words.under(text);
  return availability === 'worse-than' ? words.over(text) : text;
}

/** What a stage comes to: its line and its tables. */

import { plural } from './plural.js';

export const says = {
  says: {
    directions: (count: number, bearing: string, elevation: string) =>
      count === 1
        ? `${bearing} true, ${elevation} up`
        : `${count} slots, the first at ${bearing} true, ${elevation} up`,
    compass: (bearing: string) => `compass ${bearing}`,
    below: (slot: string) => `${slot} is below the horizon`,
    mountOne: (bearing: string, elevation: string) => `to ${bearing}, beam ${elevation} up`,
    lean: (lean: string) => `face ${lean} back from upright`,
    forward: (lean: string) => `face ${lean} forwards from upright`,
    tilt: (turn: string) => `row of feeds ${turn}`,
    polar: 'polar mount',
    tracking: 'follows by a schedule',
    noReflector: 'no reflector yet',
    clear: (slot: string, clearance: string) =>
      `clear; ${slot} is nearest to the skyline, ${clearance} above it`,
    views: (list: string) => list,
    carriers: (count: number) => plural(count, 'carrier'),
    onCable: (from: string, to: string) =>
      from === to ? `${from} MHz on the cable` : `${from} to ${to} MHz on the cable`,
    noCarrier: 'no carrier yet',
    margin: (carrier: string, margin: string, percent: string) =>
      `least margin ${margin} dB, ${carrier}, in the worst ${percent} % of the year`,
    clearMargin: (carrier: string, margin: string) =>
      `least margin in clear sky ${margin} dB, ${carrier}`,
    noMargin: 'no margin yet',
    weakest: (level: string, carrier: string, outlet: string) =>
      `weakest planned ${level} dBµV, ${carrier}, ${outlet}`,
    outlets: (count: number) => plural(count, 'outlet'),
    noOutlet: 'no outlet yet',
    axes: (list: string) => list,
    axis: (axis: string, loss: string) => `${axis}: ${loss} dB left`,
    axisUnknown: (axis: string) => `${axis}: not known`,
    notPeaked: 'not peaked yet',
    looksLike: (cause: string, where: string) =>
      `looks most like ${cause}${where ? `, ${where}` : ''}`,
  },
  tables: {
    directions: 'Directions',
    slot: 'Slot',
    trueBearing: 'True / °',
    compass: 'Compass / °',
    elevation: 'Up / °',
    turn: 'Turn',
    north: (declination: string, side: string, date: string) =>
      `The needle points ${declination}° ${side} of true north on ${date}.`,
    eastSide: 'east',
    westSide: 'west',
    feeds: 'Feeds, seen from behind',
    feed: 'Feed of',
    across: 'To the right / mm',
    upward: 'Up / mm',
    feedTurn: 'Turn',
    settings: 'Settings',
    mount: 'Mount',
    lean: 'Face leans back / °',
    views: 'View',
    over: 'Over the skyline / °',
    edge: 'Free at the edge / m',
    view: 'View',
    tuning: 'On the cable',
    carrier: 'Carrier',
    unit: 'Unit',
    megahertz: 'MHz',
    commands: 'Command',
    margin: 'Margins',
    inClear: 'Clear sky / dB',
    inRain: 'In that rain / dB',
    fails: 'Fails / % of the year',
    levels: 'Planned levels',
    outlet: 'Outlet',
    level: 'Level / dBµV',
    ratio: 'C/N / dB',
    skyTitle: 'The skyline as sighted, and the slots over it',
    skyPlain: 'The slots as they stand in this sky',
    supply: 'Supply',
    volts: (volts: string) => `${volts} V`,
    tone: '22 kHz',
    upright: 'upright',
    clockwise: (amount: string) => `${amount}° clockwise`,
    counter: (amount: string) => `${amount}° counter-clockwise`,
  },
};

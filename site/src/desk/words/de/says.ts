/** What a stage comes to, in German. */

const count = (number: number, one: string, many: string) =>
  `${number} ${number === 1 ? one : many}`;

export const says = {
  says: {
    directions: (number: number, bearing: string, elevation: string) =>
      number === 1
        ? `${bearing} geographisch, ${elevation} hoch`
        : `${number} Positionen, die erste auf ${bearing} geographisch, ${elevation} hoch`,
    compass: (bearing: string) => `Kompass ${bearing}`,
    below: (slot: string) => `${slot} steht unter dem Horizont`,
    mountOne: (bearing: string, elevation: string) => `nach ${bearing}, Keule ${elevation} hoch`,
    lean: (lean: string) => `Spiegel ${lean} nach hinten geneigt`,
    forward: (lean: string) => `Spiegel ${lean} nach vorn geneigt`,
    tilt: (turn: string) => `Reihe der Feeds ${turn}`,
    polar: 'Drehanlage',
    tracking: 'folgt nach Fahrplan',
    noReflector: 'noch kein Reflektor',
    clear: (slot: string, clearance: string) =>
      `frei; ${slot} steht der Horizontlinie am nächsten, ${clearance} darüber`,
    views: (list: string) => list,
    carriers: (number: number) => count(number, 'Träger', 'Träger'),
    onCable: (from: string, to: string) =>
      from === to ? `${from} MHz auf dem Kabel` : `${from} bis ${to} MHz auf dem Kabel`,
    noCarrier: 'noch kein Träger',
    margin: (carrier: string, margin: string, percent: string) =>
      `kleinste Reserve ${margin} dB, ${carrier}, in den schlechtesten ${percent} % des Jahres`,
    clearMargin: (carrier: string, margin: string) =>
      `kleinste Reserve bei klarem Himmel ${margin} dB, ${carrier}`,
    noMargin: 'noch keine Reserve',
    weakest: (level: string, carrier: string, outlet: string) =>
      `schwächster geplant ${level} dBµV, ${carrier}, ${outlet}`,
    outlets: (number: number) => count(number, 'Dose', 'Dosen'),
    noOutlet: 'noch keine Dose',
    axes: (list: string) => list,
    axis: (axis: string, loss: string) => `${axis}: ${loss} dB bleiben`,
    axisUnknown: (axis: string) => `${axis}: nicht bekannt`,
    notPeaked: 'noch nicht ausgerichtet',
    looksLike: (cause: string, where: string) =>
      `sieht am ehesten aus nach: ${cause}${where ? `, ${where}` : ''}`,
  },
  tables: {
    directions: 'Richtungen',
    slot: 'Position',
    trueBearing: 'Geographisch / °',
    compass: 'Kompass / °',
    elevation: 'Hoch / °',
    turn: 'Drehung',
    north: (declination: string, side: string, date: string) =>
      `Die Nadel zeigt am ${date} ${declination}° ${side} von geographisch Nord.`,
    eastSide: 'östlich',
    westSide: 'westlich',
    feeds: 'Feeds, von hinten gesehen',
    feed: 'Feed für',
    across: 'Nach rechts / mm',
    upward: 'Hoch / mm',
    feedTurn: 'Drehung',
    settings: 'Einstellung',
    mount: 'Halterung',
    lean: 'Spiegel nach hinten geneigt / °',
    views: 'Sicht',
    over: 'Über der Horizontlinie / °',
    edge: 'Frei am Rand / m',
    view: 'Sicht',
    tuning: 'Auf dem Kabel',
    carrier: 'Träger',
    unit: 'Einheit',
    megahertz: 'MHz',
    commands: 'Befehl',
    margin: 'Reserven',
    inClear: 'Klarer Himmel / dB',
    inRain: 'In diesem Regen / dB',
    fails: 'Fällt aus / % des Jahres',
    levels: 'Geplante Pegel',
    outlet: 'Dose',
    level: 'Pegel / dBµV',
    ratio: 'C/N / dB',
    skyTitle: 'Die Horizontlinie wie gesichtet, und die Positionen darüber',
    skyPlain: 'Die Positionen, wie sie an diesem Himmel stehen',
    supply: 'Speisung',
    volts: (volts: string) => `${volts} V`,
    tone: '22 kHz',
    upright: 'aufrecht',
    clockwise: (amount: string) => `${amount}° im Uhrzeigersinn`,
    counter: (amount: string) => `${amount}° gegen den Uhrzeigersinn`,
  },
};

/**
 * Words of the trade that a page does not use but its readers type. They are found by the search and shown nowhere.
 * Also how heavy a page weighs there: an example answers a question, an API page names a function.
 */

const ALL = 'LNB LNBF dish sat antenna align alignment installer';

export const KEYWORDS: Readonly<Record<string, string>> = {
  '': 'dish pointing calculator compass elevation scale inclinometer LNB skew twist',
  'examples/where-is-the-satellite':
    'dish pointing azimuth elevation look angles compass bearing inclinometer elevation scale offset dish tilt how to align',
  'examples/how-far-to-turn-the-feed':
    'LNB skew twist LNB rotation polarisation polarization tilt of the LNB cross-pol',
  'examples/can-one-reflector-take-them-all':
    'multifeed multi-feed monoblock toroidal several LNBs one dish',
  'examples/typed-coordinates':
    'GPS position degrees minutes seconds DMS UTM MGRS grid reference plus code',
  'examples/north-by-the-sun': 'compass declination magnetic variation true north shadow',
  'examples/is-the-view-clear':
    'line of sight obstruction trees roof building inclinometer clinometer skyline',
  'examples/what-does-a-leaning-mast-do': 'plumb pole mast tilt vertical spirit level',
  'examples/how-is-a-polar-mount-set': 'motor rotor H-H motorised actuator declination offset',
  'examples/half-way-back':
    'peaking peak signal fine tune fine alignment dish alignment how to align level meter turns',
  'examples/find-the-peak': 'peaking peak signal strength fine tune alignment meter',
  'examples/main-lobe-or-side-lobe': 'side lobe sidelobe false peak wrong peak weak signal',
  'examples/both-axes-in-turn': 'azimuth elevation alternate fine tune peaking',
  'examples/where-is-the-null': 'cross-pol crosspol XPD XPI isolation null skew LNB uplink test',
  'examples/when-to-peak-on-a-moving-satellite': 'inclined orbit drift tracking figure of eight',
  'examples/how-far-is-safe': 'radiation hazard EMF exposure VSAT BUC transmit safety distance RF',
  'examples/sun-outages': 'sun outage sun transit solar interference October March equinox',
  'examples/how-much-rain-margin': 'rain fade availability link margin Ka band attenuation weather',
  'examples/what-the-air-takes': 'atmospheric loss gas water vapour oxygen cloud attenuation',
  'examples/does-the-link-close':
    'link budget EIRP G/T C/N MER Eb/N0 VSAT uplink downlink footprint',
  'examples/which-reflector': 'dish size what size dish diameter LNB noise figure G/T',
  'examples/which-mode-when': 'DVB-S2 MODCOD ACM VCM adaptive coding modulation',
  'examples/do-the-neighbours-disturb':
    'adjacent satellite interference off-axis dish size spacing',
  'examples/levels-at-every-outlet':
    'cable loss splitter tap multiswitch amplifier dBuV signal level wall plate outlet attenuation 50 m',
  'examples/what-is-wrong-here':
    'no signal fault finding troubleshooting low signal pixelation level too low MER BER LNB broken',
  'examples/accept-or-not':
    'acceptance measurement uncertainty pass fail limit guard band test report',
  'reference/glossary': 'LNB LNBF low-noise block BUC OMT VSAT dish MER BER SNR inclinometer',
};

/** Words for a page. */
export const wordsFor = (id: string): string =>
  id.startsWith('examples/') ? `${KEYWORDS[id] ?? ''} ${ALL}` : (KEYWORDS[id] ?? '');

/** Weight of a page in the search. */
export const weightOf = (id: string): string =>
  /^(\w\w\/)?examples\//.test(id)
    ? '5'
    : id.startsWith('api/')
      ? '0.3'
      : id.startsWith('validation')
        ? '0.5'
        : '3';

/** What readers of the English pages type, by page, misspelt as people misspell it. */

export const ENGLISH: Readonly<Record<string, string>> = {
  '': 'dish pointing calculator compass elevation scale inclinometer LNB skew twist',
  'examples/where-is-the-satellite':
    'look angles look angles azimut elevation where to point the dish direction dish pointing azimuth elevation look angles compass bearing inclinometer elevation scale offset dish tilt how to align allign aligment satelite direction elivation elavation azimuth azimut inclinometer reading angle finder which way does the dish face point calculator clinometer app',
  'examples/how-far-to-turn-the-feed':
    'LNB skew twist LNB rotation polarisation polarization tilt of the LNB cross-pol skue scew LNB angle rotate feedhorn rotation polarisaton polarization angle polarity angle clockwise',
  'examples/can-one-reflector-take-them-all':
    'two satellites one dish several satellites multiple feeds multifeed multi-feed monoblock toroidal several LNBs one dish dual feed bracket twin feed holder two LNBs second LNB squinting several satellites one antenna',
  'examples/typed-coordinates':
    'GPS position degrees minutes seconds DMS UTM MGRS grid reference plus code',
  'examples/north-by-the-sun':
    'find north without compass compass declination magnetic variation true north shadow compass wrong compass wrong magnetic north true north declination declination declination compass next to steel iron mast deviation bearing',
  'examples/is-the-view-clear':
    'trees in the way tree obstruction blocked view wall line of sight obstruction trees roof building inclinometer clinometer skyline tree growing into the beam leaves building blocks satellite neighbour house crane chimney clinometer',
  'examples/what-does-a-leaning-mast-do':
    'tripod not level mast not plumb crooked pole bent mast plumb pole mast tilt vertical spirit level level base wall bracket crooked not straight',
  'examples/how-is-a-polar-mount-set':
    'motor rotor H-H motorised actuator declination offset motor dish setup motor setup rotor setting rotation limit',
  'examples/half-way-back':
    'peaking peak signal fine tune fine alignment dish alignment how to align level meter turns peak the dish peak the dish peaking alignement alignment turnbuckle adjuster equal levels bracketing fine-tune',
  'examples/find-the-peak':
    'maximum signal highest level search practise peaking peak signal strength fine tune alignment meter tune in sweep search',
  'examples/main-lobe-or-side-lobe': 'side lobe sidelobe false peak wrong peak weak signal',
  'examples/both-axes-in-turn': 'azimuth elevation alternate fine tune peaking',
  'examples/where-is-the-null':
    'crosspol cross-pol crosspol cross polar purity cross-pol crosspol XPD XPI isolation null skew LNB uplink test cross-pol isolation cross-pol isolation cross polarization isolation XPD null minimum',
  'examples/when-to-peak-on-a-moving-satellite':
    'inclined orbit drift tracking figure of eight satellite moves during the day level changes morning evening drifting satellite figure 8 box',
  'examples/how-far-is-safe':
    'keep distance from dish radiation radiation hazard EMF exposure VSAT BUC transmit safety distance RF stand in front of the dish dangerous safe RF exposure limit burn power density',
  'examples/sun-outages':
    'signal drops at noon drops out midday lost every day same time sun outage sun transit solar interference October March equinox sun fade sun fade satellite in front of the sun behind spring autumn outage dates midday dropouts',
  'examples/how-much-rain-margin':
    'thunderstorm no signal in rain storm heavy rain availability drops out when it rains rain fade availability link margin Ka band attenuation weather picture freezes in rain freezes when it rains avaliability availability 99.7 99.9 percent outage hours a year fade margin monsoon',
  'examples/what-the-air-takes': 'atmospheric loss gas water vapour oxygen cloud attenuation',
  'examples/does-the-link-close':
    'link budget budget link budget EIRP G/T C/N MER Eb/N0 VSAT uplink downlink footprint EIRP EIRP EIRP noise temperature noise temperature system noise footprint footprint map link margin calculation budgit C/N0 noise temperature temperature footprint footprint footprint',
  'examples/which-reflector':
    'antenna too small reflector too small bigger dish larger dish dish size what size dish diameter LNB noise figure G/T bigger antenna reflector diameter gain how large which dish 60 cm 80 cm 90 cm',
  'examples/which-mode-when': 'DVB-S2 MODCOD ACM VCM adaptive coding modulation',
  'examples/do-the-neighbours-disturb':
    'adjacent satellite interference off-axis dish size spacing',
  'examples/levels-at-every-outlet':
    'coax attenuation coaxial cable length too long wall plate cable loss splitter tap multiswitch amplifier dBuV signal level wall plate outlet attenuation 50 m attenuation RG6 RG-6 RG59 RG11 coax loss per metre attenuaton amplifier overload overloaded multi switch multiswitch too many splitters level too low at the socket wall socket outlet dBuV dBmV cable loss per 100 m line amplifier',
  'examples/what-is-wrong-here':
    'no signal no lock weak signal bad quality no signal fault finding troubleshooting low signal pixelation level too low MER BER LNB broken F connector corrosion corroded connector water in the cable wet cable moisture no lock recption reception problem fault finding snow on the dish loose connector broken cable intermittent drops out LNB dead picture breaks up blocky',
  'examples/accept-or-not':
    'acceptance measurement uncertainty pass fail limit guard band test report acceptance test reading at the limit tolerance conformity borderline decision rule within limits reading at the limit limit limit value',
  'examples/which-frequency-do-i-tune':
    'LO frequency LNB frequency LOF local oscillator IF intermediate frequency L-band transponder frequency 9750 10600 5150 universal LNB low band high band 22 kHz tone 22khz 13V 18V 13/18 volt band switching polarity voltage inverted spectrum image wideband LNB wrong LO no lock frequenz frequency calculator tunning',
  'examples/how-do-several-receivers-share-one-cable':
    'single cable one cable several receivers SCR channel stacking user band userband EN 50494 EN 50607 EN50494 EN50607 tuning word single coax multiple receivers cascade daisy chain two receivers one cable user band user band user bands',
  'examples/what-does-the-meter-really-say':
    'MER C/N CNR SNR Es/N0 Eb/N0 EsNo EbNo spectrum analyser analyzer RBW resolution bandwidth noise floor marker channel power meter reading quality BER convert MER to C/N signal quality percent MER vs C/N MER to CN dB over noise signal strength and quality percent noise floor analyser',
  'examples/two-instruments-two-readings':
    'two meters differ meter offset calibration compare meters different readings second meter LNB gain differs level differs instrument offset systematic error cross check which meter is right meter calibration offset two meters different readings',
  'examples/how-is-a-two-way-terminal-lined-up':
    'VSAT commissioning line-up lineup BUC power uplink EIRP P1dB 1 dB compression back-off saturation off-axis S.524 S.728 mask cross-pol test XPI CW carrier NOC hub control centre access test UPC uplink power control transmit setup',
  'examples/how-much-ballast-does-a-flat-roof-need':
    'non-penetrating mount ballast weight flat roof wind load paving slabs concrete blocks wind force moment mast bending sway gust how heavy tripod storm dish blown over balast wobbly mast dish moves in the wind wobbles shakes swaying stiffness',
  'examples/does-a-mobile-mast-disturb':
    '5G LTE 4G interference mobile phone mast cell tower DECT cordless phone ingress shielding screening class A coax C-band 5G filter freezes picture breaks up terrestrial interference',
  'examples/what-does-circular-polarization-lose':
    'LHCP RHCP left hand right hand circular polarisation axial ratio circular LNB linear LNB on circular 3 dB depolarizer dielectric plate Faraday rotation ionosphere C band L band',
  'examples/what-did-a-hundred-records-teach':
    'statistics many sites learn footprint correction drift re-peak sampling AQL acceptance sampling ISO 2859 ISO 3951 lot inspection operating characteristic OC curve how many to check quality sample size how many to check inspection quality control',
  'start/one-job':
    'job sheet record commissioning report installation report site visit work order checklist service call as-built handover print dish installation step by step app for installers LNB antenna align measurement report measurement protocol test report site survey form',
  'reference/glossary': 'LNB LNBF low-noise block BUC OMT VSAT dish MER BER SNR inclinometer',
  'examples/does-your-formula-hold': 'check my formula own formula rule of thumb formulas equation',
  'examples/a-sheet-for-the-class':
    'exercise sheet exam questions worksheet test answers key homework',
};

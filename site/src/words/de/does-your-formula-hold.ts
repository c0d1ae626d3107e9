/** German for `does-your-formula-hold`. */

import type { Pairs } from '../../lib/language/language.js';

/** Quantities: as labels of fields and axes. */
const QUANTITIES: Pairs = {
  Latitude: 'Breite',
  'Longitude difference': 'Längendifferenz',
  Diameter: 'Durchmesser',
  'Surface error': 'Oberflächenfehler',
  'Noise figure': 'Rauschmaß',
  'Rain rate': 'Regenrate',
  Depth: 'Tiefe',
  'First distance': 'Erste Entfernung',
  'Second distance': 'Zweite Entfernung',
  'Transmit power': 'Sendeleistung',
  'Transmit loss': 'Sendeverlust',
  Gain: 'Gewinn',
  'System noise temperature': 'Systemrauschtemperatur',
  'Radiated power': 'Abgestrahlte Leistung',
  'Path loss': 'Streckenverlust',
  'Figure of merit': 'Güte G/T',
  'Noise bandwidth': 'Rauschbandbreite',
  'Noise temperature': 'Rauschtemperatur',
  Power: 'Leistung',
  Voltage: 'Spannung',
  Skew: 'Polarisationswinkel',
  'Polar declination': 'Deklinationswinkel einer Polarhalterung',
  'Apparent elevation gain': 'Anhebung durch Refraktion',
  Beamwidth: 'Halbwertsbreite',
  'Antenna gain': 'Antennengewinn',
  'Pointing loss': 'Ausrichtverlust',
  'Surface loss': 'Oberflächenverlust',
  'Free space loss': 'Freiraumdämpfung',
  'Rain attenuation': 'Regendämpfung',
  'Focal length': 'Brennweite',
  'Far field distance': 'Fernfeldabstand',
  'Fresnel radius': 'Fresnel-Radius',
  'Carrier to noise': 'Träger-Rausch-Abstand',
  'Power in dBm': 'Leistung in dBm',
  'Level in dBµV': 'Pegel in dBµV',
  'Decibels of a power ratio': 'Dezibel eines Leistungsverhältnisses',
  'Decibels of a voltage ratio': 'Dezibel eines Spannungsverhältnisses',
};
/** Quantities that have their label among the words of all examples. */
const SHARED: Pairs = {
  Azimuth: 'Azimut',
  Elevation: 'Elevation',
  'Slant range': 'Entfernung',
  Level: 'Pegel',
  Frequency: 'Frequenz',
  'Pointing error': 'Ausrichtfehler',
};
/** The same in small letters, within sentences, and as the library's names in its sentences. */
const SMALL: Pairs = Object.fromEntries(
  Object.entries({ ...SHARED, ...QUANTITIES }).map(([english, german]) => [
    `${english[0]?.toLowerCase()}${english.slice(1)}`,
    german,
  ]),
);
/** Names of the library's variables as it says them, where they differ from the labels. */
const NAMED: Pairs = {
  offset: 'Ausrichtfehler',
  eirp: 'EIRP',
  'figure of merit': 'Güte G/T',
  'rain rate001': 'Regenrate',
  'power ratio': 'Leistungsverhältnis',
  'voltage ratio': 'Spannungsverhältnis',
  'angle at the centre of the Earth': 'Winkel am Erdmittelpunkt',
  'radius of the Earth, {} km': 'Erdradius, {} km',
  'radius of the orbit, {} km': 'Bahnradius, {} km',
  'height of the orbit, {} km': 'Bahnhöhe, {} km',
  'radius of the Earth over that of the orbit, {}': 'Erdradius durch Bahnradius, {}',
  'elevation of the satellite': 'Elevation des Satelliten',
  'azimuth of the satellite': 'Azimut des Satelliten',
  'satellite longitude': 'Länge des Satelliten',
  'station longitude': 'Länge des Standorts',
  'wavelength in metres': 'Wellenlänge in Metern',
  'speed of light, in metres times GHz so that c/f is in metres':
    'Lichtgeschwindigkeit in Metern mal GHz, sodass c/f in Metern steht',
  'wavelength in kilometres, like the distance': 'Wellenlänge in Kilometern, wie die Entfernung',
  'speed of light, in kilometres times GHz': 'Lichtgeschwindigkeit in Kilometern mal GHz',
  'aperture efficiency, {}': 'Flächenwirkungsgrad, {}',
  'half-power beamwidth in degrees, 70 wavelengths over the diameter':
    'Halbwertsbreite in Grad, 70 Wellenlängen durch den Durchmesser',
  "Boltzmann's constant, {} dBW/K/Hz": 'Boltzmann-Konstante, {} dBW/K/Hz',
  'reference temperature, 290 K': 'Bezugstemperatur, 290 K',
  'transmit power in dBW': 'Sendeleistung in dBW',
};
/** With an article, as remarks say them; whole, because a shorter pair would take them apart at their 'of'. */
const WITH_ARTICLE: Pairs = Object.fromEntries(
  Object.entries(NAMED).map(([english, german]) => [`the ${english}`, german]),
);
/** Labels of axes that have an 'of' or a 'to' in them. */
const AXES: Pairs = Object.fromEntries(
  Object.entries(QUANTITIES).map(([english, german]) => [`${english} / {}`, `${german} / {}`]),
);

const FUNCTIONS: Pairs = {
  sine: 'Sinus',
  cosine: 'Kosinus',
  tangent: 'Tangens',
  arctangent: 'Arkustangens',
  arcsine: 'Arkussinus',
  arccosine: 'Arkuskosinus',
  'decimal logarithm': 'Zehnerlogarithmus',
  'natural logarithm': 'natürlicher Logarithmus',
  minimum: 'Minimum',
  maximum: 'Maximum',
};

const INPUTS: Pairs = {
  'What the formula gives': 'Was die Formel liefert',
  'Its variables and their short names are listed under the answer.':
    'Die Variablen und ihre kurzen Namen stehen unter der Antwort.',
  'The formula': 'Die Formel',
  'As you have it: from a spreadsheet, a calculator, a program, a hand-out or LaTeX. How it was read is told under the answer.':
    'So wie sie vorliegt: aus Tabellenkalkulation, Taschenrechner, Programm, Merkblatt oder LaTeX. Wie sie gelesen wurde, steht unter der Antwort.',
  'What its names mean': 'Was ihre Namen bedeuten',
  'Only for names that are not known, one on a line: A1 = lat':
    'Nur für unbekannte Namen, je Zeile einer: A1 = lat',
  '{} from': '{} von',
  '{} to': '{} bis',
  'to 1': 'zu 1',
  usual: 'üblich',
  Tolerance: 'Toleranz',
  'In the unit of the answer.': 'In der Einheit der Antwort.',
  'Rules of thumb in use': 'Verbreitete Faustformeln',
  'A formula of my own': 'Eine eigene Formel',
  '{}: south plus arctangent': '{}: Süd plus Arkustangens',
  '{}: four quadrant azimuth': '{}: mit vier Quadranten',
  '{}: sphere elevation': '{}: auf der Kugel',
  '{}: one height for all': '{}: eine Höhe für alle',
  '{}: sphere range': '{}: auf der Kugel gerechnet',
  '{}: short skew': '{}: kurze Form',
  '{}: sphere declination': '{}: auf der Kugel',
  '{}: seventy wavelengths': '{}: siebzig Wellenlängen',
  '{}: gain by size': '{}: nach der Größe',
  '{}: twelve times square': '{}: zwölfmal das Quadrat',
  '{}: surface by square': '{}: nach dem Quadrat',
  '{}: ninety two and a half': '{}: zweiundneunzigeinhalb',
  '{}: seventy kelvin a decibel': '{}: siebzig Kelvin je Dezibel',
  '{}: refraction by cotangent': '{}: nach dem Kotangens',
};

const RULES: Pairs = {
  '(Common practice of the trade.)': '(Übliche Praxis des Fachs.)',
  'Azimuth is 180 less the arctangent of tan(longitude difference) over sin(latitude).':
    'Der Azimut ist 180 minus Arkustangens von tan(Längendifferenz) durch sin(Breite).',
  'The same with both signs kept.': 'Dasselbe, aber beide Vorzeichen bleiben erhalten.',
  'Elevation on a round Earth, 0.1512 being its radius over that of the orbit.':
    'Elevation auf einer runden Erde; 0,1512 ist Erdradius durch Bahnradius.',
  'The satellite is 36000 km away.': 'Der Satellit ist 36 000 km entfernt.',
  'Range from the height of the orbit and the angle at the Earth’s centre.':
    'Entfernung aus der Bahnhöhe und dem Winkel am Erdmittelpunkt.',
  'Skew is the arctangent of sin(longitude difference) over tan(latitude).':
    'Der Polarisationswinkel (Skew) ist der Arkustangens von sin(Längendifferenz) durch tan(Breite).',
  'Declination offset of a polar mount on a round Earth.':
    'Deklinationswinkel einer Polarhalterung auf einer runden Erde.',
  'Beamwidth is 21 over frequency in GHz and diameter in metres.':
    'Die Halbwertsbreite ist 21 durch Frequenz in GHz und Durchmesser in Metern.',
  'Gain is 18.5 dB and 20 log of frequency in GHz times diameter in metres.':
    'Der Gewinn ist 18,5 dB plus 20 log von Frequenz in GHz mal Durchmesser in Metern.',
  'Pointing loss is twelve times the square of error over beamwidth.':
    'Der Ausrichtverlust ist zwölfmal das Quadrat von Fehler durch Halbwertsbreite.',
  'Surface loss is 0.0076 times the square of millimetres times GHz.':
    'Der Oberflächenverlust ist 0,0076 mal das Quadrat von Millimetern mal GHz.',
  'Free-space loss is 92.5 dB and 20 log of GHz times kilometres.':
    'Die Freiraumdämpfung ist 92,5 dB plus 20 log von GHz mal Kilometern.',
  'Each dB of noise figure is 70 K.': 'Jedes dB Rauschmaß sind 70 K.',
  'Refraction is 0.018 degree times the cotangent of the elevation.':
    'Die Refraktion ist 0,018 Grad mal Kotangens der Elevation.',
};

const MEANINGS: Pairs = {
  'azimuth of the satellite in degrees, clockwise from true north, on the WGS 84 ellipsoid':
    'Azimut des Satelliten in Grad, im Uhrzeigersinn ab geografisch Nord, auf dem Ellipsoid WGS 84',
  'geometric elevation of the satellite in degrees on the WGS 84 ellipsoid':
    'geometrische Elevation des Satelliten in Grad auf dem Ellipsoid WGS 84',
  'distance of the satellite in kilometres': 'Entfernung des Satelliten in Kilometern',
  'polarization skew in degrees, clockwise positive as seen from behind the antenna':
    'Polarisationswinkel (Skew) in Grad, positiv im Uhrzeigersinn, von hinter der Antenne gesehen',
  'declination offset of a polar mount at its highest point in degrees (elevation there is 90 - latitude - offset)':
    'Deklinationswinkel einer Polarhalterung an ihrem höchsten Punkt in Grad (dort ist die Elevation 90 - Breite - Winkel)',
  'by how much refraction lifts the satellite in degrees (ITU-R P.834)':
    'um wie viel Grad die Refraktion den Satelliten anhebt (ITU-R P.834)',
  'half-power beamwidth in degrees, 70 wavelengths over the diameter':
    'Halbwertsbreite in Grad, 70 Wellenlängen durch den Durchmesser',
  'gain in dBi at an aperture efficiency of 0.65':
    'Gewinn in dBi bei einem Flächenwirkungsgrad von 0,65',
  'loss in dB of a beam that points beside the satellite, 70 wavelengths over the diameter wide':
    'Verlust in dB einer Keule, die neben den Satelliten zeigt und 70 Wellenlängen durch den Durchmesser breit ist',
  'loss in dB of a rough surface': 'Verlust in dB durch eine raue Oberfläche',
  'free-space loss in dB': 'Freiraumdämpfung in dB',
  'noise temperature in kelvins of a noise figure': 'Rauschtemperatur in Kelvin zu einem Rauschmaß',
  'rain attenuation in dB exceeded for 0.1 % of the year (P.618-14) at 47 N, sea level, rain height 3 km, circular polarization':
    'Regendämpfung in dB, überschritten in 0,1 % des Jahres (P.618-14), auf 47 N, Meereshöhe, Regenhöhe 3 km, zirkular polarisiert',
  'focal length in metres of a prime-focus reflector from its diameter and depth':
    'Brennweite in Metern eines zentral gespeisten Reflektors aus Durchmesser und Tiefe',
  'distance in metres from which a pattern may be measured (IEEE Std 145)':
    'Entfernung in Metern, ab der ein Diagramm gemessen werden darf (IEEE Std 145)',
  'radius in metres of the first Fresnel zone at an obstacle on the path (ITU-R P.526)':
    'Radius in Metern der ersten Fresnel-Zone an einem Hindernis auf der Strecke (ITU-R P.526)',
  'equivalent isotropically radiated power in dBW from power in watts, loss and gain':
    'äquivalente isotrope Strahlungsleistung in dBW aus Leistung in Watt, Verlust und Gewinn',
  'figure of merit G/T in dB/K': 'Güte G/T in dB/K',
  'carrier-to-noise ratio in dB from EIRP, losses, figure of merit and noise bandwidth':
    'Träger-Rausch-Abstand in dB aus EIRP, Verlusten, Güte und Rauschbandbreite',
  'noise figure in dB of a noise temperature': 'Rauschmaß in dB zu einer Rauschtemperatur',
  'power in dBm of a power in watts': 'Leistung in dBm zu einer Leistung in Watt',
  'level in dBµV in 75 ohm of a level in dBm': 'Pegel in dBµV an 75 Ohm zu einem Pegel in dBm',
  'decibels of a ratio of two powers': 'Dezibel eines Verhältnisses zweier Leistungen',
  'decibels of a ratio of two voltages across equal impedances':
    'Dezibel eines Verhältnisses zweier Spannungen an gleichen Widerständen',

  'geodetic latitude of the station in degrees, north positive':
    'geodätische Breite des Standorts in Grad, Nord positiv',
  'longitude of the satellite less that of the station in degrees, positive to the east':
    'Länge des Satelliten minus Länge des Standorts in Grad, nach Osten positiv',
  'frequency in GHz': 'Frequenz in GHz',
  'diameter of the reflector in metres': 'Durchmesser des Reflektors in Metern',
  'geometric elevation in degrees': 'geometrische Elevation in Grad',
  'pointing error in degrees': 'Ausrichtfehler in Grad',
  'root-mean-square error of the surface in millimetres':
    'quadratisches Mittel der Oberflächenfehler in Millimetern',
  'distance in kilometres': 'Entfernung in Kilometern',
  'noise figure in dB': 'Rauschmaß in dB',
  'rain rate exceeded for 0.01 % in mm/h': 'Regenrate in mm/h, überschritten in 0,01 %',
  'elevation in degrees': 'Elevation in Grad',
  'depth of the reflector in metres': 'Tiefe des Reflektors in Metern',
  'distance of the obstacle from one end in km': 'Entfernung des Hindernisses von einem Ende in km',
  'distance of the obstacle from the other end in km':
    'Entfernung des Hindernisses vom anderen Ende in km',
  'transmit power in watts': 'Sendeleistung in Watt',
  'loss between amplifier and feed in dB': 'Verlust zwischen Verstärker und Feed in dB',
  'antenna gain in dBi': 'Antennengewinn in dBi',
  'system noise temperature in kelvins': 'Systemrauschtemperatur in Kelvin',
  'equivalent isotropically radiated power in dBW':
    'äquivalente isotrope Strahlungsleistung in dBW',
  'free-space loss and all others in dB': 'Freiraumdämpfung und alle anderen Verluste in dB',
  'noise bandwidth in MHz': 'Rauschbandbreite in MHz',
  'noise temperature in kelvins': 'Rauschtemperatur in Kelvin',
  'power in watts': 'Leistung in Watt',
  'level in dBm': 'Pegel in dBm',
  'ratio of two powers': 'Verhältnis zweier Leistungen',
  'ratio of two voltages': 'Verhältnis zweier Spannungen',
};

const VERDICTS: Pairs = {
  'There is nothing to compare: in this region the satellite is below the horizon everywhere.':
    'Es gibt nichts zu vergleichen: in diesem Gebiet steht der Satellit überall unter dem Horizont.',
  'It is exact.': 'Sie ist genau.',
  'At worst it is off by {}, at {}.': 'Schlimmstenfalls liegt sie um {} daneben, bei {}.',
  'At {} of the places it has no value, for instance at {}.':
    'An {} der Stellen hat sie keinen Wert, zum Beispiel bei {}.',
  'It holds: within {} everywhere in this region.':
    'Sie stimmt: überall in diesem Gebiet auf {} genau.',
  'It holds in part: {} of the places are within {}.':
    'Sie stimmt zum Teil: {} der Stellen liegen innerhalb von {}.',
  'It is right but for one thing.': 'Sie stimmt bis auf eines.',
  'As it stands, {} of the places are within {}.':
    'So wie sie dasteht, liegen {} der Stellen innerhalb von {}.',
  'It fails: only {} of the places are within {}.':
    'Sie stimmt nicht: nur {} der Stellen liegen innerhalb von {}.',
  'none found': 'keiner gefunden',
  'Within tolerance': 'Innerhalb der Toleranz',
  'of {} places, within {}': 'von {} Stellen, auf {} genau',
  'Worst place': 'Schlimmste Stelle',
  'There the formula says': 'Dort liefert die Formel',
  'exact: {}': 'genau: {}',
  'Root mean square error': 'Quadratisches Mittel des Fehlers',
  'Places without a value': 'Stellen ohne Wert',
  'Read as: {}': 'Gelesen als: {}',
  'It holds as: {}': 'Sie stimmt als: {}',
  'Corrected: {}': 'Berichtigt: {}',
  'By area': 'Nach Gebieten',
  Area: 'Gebiet',
  Within: 'Innerhalb',
  'Largest error / {}': 'Größter Fehler / {}',
  'no value': 'kein Wert',
  'Compared with: {}': 'Verglichen mit: {}',
  Variable: 'Variable',
  From: 'Von',
  To: 'Bis',
  'northern hemisphere': 'Nordhalbkugel',
  'southern hemisphere': 'Südhalbkugel',
  'within 5 degrees of the equator': 'höchstens 5 Grad vom Äquator',
  'satellite to the east': 'Satellit im Osten',
  'satellite to the west': 'Satellit im Westen',
  'within 10 degrees of the middle of the arc': 'höchstens 10 Grad von der Mitte des Bogens',
  'elevation under {} degrees': 'Elevation unter {} Grad',
  'under 1 metre': 'unter 1 Meter',
  'over 20 GHz': 'über 20 GHz',

  'Error of the formula by {} and {}; the ring is the worst place':
    'Fehler der Formel nach {} und {}; der Ring ist die schlimmste Stelle',
  'Error of the formula by {} and {}, the largest over all values of {}; the ring is the worst place':
    'Fehler der Formel nach {} und {}, der größte über alle Werte von {}; der Ring ist die schlimmste Stelle',
  'The formula and the exact answer by {}': 'Die Formel und die genaue Antwort nach {}',
  'Figure of merit to': 'Güte G/T bis',
  and: 'und',
  '{} / {}': '{1} / {2}',
  '{} \\ {}': '{1} \\ {2}',
  '{}: {}': '{1}: {2}',
  'up to {}': 'bis {}',
  'to {}': 'bis {}',
  'to {}, the tolerance': 'bis {}, die Toleranz',
  'to {}: outside': 'bis {}: außerhalb',
  'over {}': 'über {}',
  'no exact answer: below the horizon': 'keine genaue Antwort: unter dem Horizont',
  'the formula has no value': 'die Formel hat keinen Wert',
  exact: 'genau',
  'the formula': 'die Formel',
};

const DIAGNOSES: Pairs = {
  'Its power is in dBW where dBm is asked: 30 dB are missing (or {} in the place of {}).':
    'Ihre Leistung steht in dBW, gefragt ist dBm: es fehlen 30 dB (oder {} an Stelle von {}).',
  'Its power is in dBm where dBW is asked: 30 dB are too many (or {} in the place of {}).':
    'Ihre Leistung steht in dBm, gefragt ist dBW: es sind 30 dB zu viel (oder {} an Stelle von {}).',
  'It wants the {} in {}, not in {} (or {} in the place of {}).':
    '{1}: die Formel verlangt {2} statt {3} (oder {4} an Stelle von {5}).',
  'Its power is in dBW where dBm is asked: 30 dB are missing.':
    'Ihre Leistung steht in dBW, gefragt ist dBm: es fehlen 30 dB.',
  'Its power is in dBm where dBW is asked: 30 dB are too many.':
    'Ihre Leistung steht in dBm, gefragt ist dBW: es sind 30 dB zu viel.',
  'The sign of the whole is turned.': 'Das Vorzeichen des Ganzen ist vertauscht.',
  '{} degrees must be added.': '{} Grad müssen addiert werden.',
  '{} degrees must be subtracted.': '{} Grad müssen abgezogen werden.',
  'The sign is turned and 180 degrees are missing: it must be subtracted from 180.':
    'Das Vorzeichen ist vertauscht und 180 Grad fehlen: sie ist von 180 abzuziehen.',
  'It gives the complement: it must be subtracted from 90.':
    'Sie liefert den Ergänzungswinkel: sie ist von 90 abzuziehen.',
  'It must be subtracted from 360.': 'Sie ist von 360 abzuziehen.',
  'The sign is turned and 90 degrees are too many.':
    'Das Vorzeichen ist vertauscht und 90 Grad sind zu viel.',
  'The answer is in radians, not in degrees.': 'Die Antwort steht im Bogenmaß, nicht in Grad.',
  'The answer is turned into degrees once too often.':
    'Die Antwort wird einmal zu oft in Grad umgerechnet.',
  'The {} of it is not taken.': 'Es fehlt davon: {}.',
  '{} times its logarithm is not taken.': 'Es fehlt {} mal der Logarithmus davon.',
  'It is half of what it should be.': 'Sie liefert die Hälfte des richtigen Werts.',
  'It is twice what it should be.': 'Sie liefert das Doppelte des richtigen Werts.',
  'The square root is not taken.': 'Die Quadratwurzel fehlt.',
  'It is not squared.': 'Das Quadrat fehlt.',
  'The sign of the longitude difference is turned (station less satellite, or longitudes counted to the west).':
    'Das Vorzeichen der Längendifferenz ist vertauscht (Standort minus Satellit, oder Längen nach Westen gezählt).',
  'The sign of the {} is turned.': 'Vertauschtes Vorzeichen: {}.',
  "{} and {} stand in each other's place.": 'Miteinander vertauscht: {} und {}.',
  'It wants the {} in {}, not in {}.': '{1}: die Formel verlangt {2} statt {3}.',
  'Degrees are put in where the functions take radians.':
    'Eingesetzt werden Grad, die Funktionen verlangen das Bogenmaß.',
  'Degrees are put in where the functions take radians, and the answer is left in radians.':
    'Eingesetzt werden Grad, die Funktionen verlangen das Bogenmaß; auch die Antwort bleibt im Bogenmaß.',
  'The inverse functions give radians, and degrees are needed.':
    'Die Umkehrfunktionen liefern das Bogenmaß, gebraucht werden Grad.',
  'Radians are put in where the functions take degrees.':
    'Eingesetzt wird das Bogenmaß, die Funktionen verlangen Grad.',
  'Radians are put in where the functions take degrees, and the answer is taken for radians.':
    'Eingesetzt wird das Bogenmaß, die Funktionen verlangen Grad; auch die Antwort wird für Bogenmaß gehalten.',
  'There is a plus where a minus belongs, before {}.': 'Plus statt Minus vor {}.',
  'There is a minus where a plus belongs, before {}.': 'Minus statt Plus vor {}.',
  'There is a {} where a {} belongs, of {}.': '{1} statt {2} von {3}.',
  'The longitude of the station stands where the {} belongs.':
    'Die Länge des Standorts steht an falscher Stelle; dorthin gehört: {}.',
  'The longitude of the satellite stands where the {} belongs.':
    'Die Länge des Satelliten steht an falscher Stelle; dorthin gehört: {}.',
  'The {} stands where the {} belongs.': 'An falscher Stelle: {1}; dorthin gehört: {2}.',
  'One {} has degrees and radians mixed up.': 'Einmal sind Grad und Bogenmaß vertauscht: {}.',
  'The sign is dropped, of {}.': 'Das Vorzeichen geht verloren, und zwar von {}.',
  'A square root is taken too much, of {}.': 'Eine Quadratwurzel ist zu viel, und zwar von {}.',
  'The {} is not squared.': 'Nicht quadriert: {}.',
  'The square root of the {} is not taken.': 'Es fehlt die Quadratwurzel von: {}.',
  'A power is taken too much, of {}.': 'Eine Potenz ist zu viel, und zwar von {}.',
  'A power stands where a square root belongs, of {}.':
    'Potenz statt Quadratwurzel, und zwar von {}.',
  'The square root is not taken, of {}.': 'Die Quadratwurzel fehlt, und zwar von {}.',
  'It multiplies by {} where it should divide.': 'Sie multipliziert mit {}, statt zu dividieren.',
  'It divides by {} where it should multiply.': 'Sie dividiert durch {}, statt zu multiplizieren.',
  "{} and {} stand in each other's place in the fraction.":
    'Im Bruch miteinander vertauscht: {} und {}.',
  'The two sides of the fraction are exchanged.': 'Zähler und Nenner sind vertauscht.',
  'The two sides of the subtraction are exchanged.':
    'Die beiden Seiten der Subtraktion sind vertauscht.',
  'It is right only here: {}.': 'Sie stimmt nur hier: {}.',
  'It is right only here: {}. Elsewhere it is off by 180 degrees, because the quotient has lost which of its sides was negative; an arctangent of two arguments keeps both signs.':
    'Sie stimmt nur hier: {}. Sonst liegt sie um 180 Grad daneben, weil der Quotient nicht mehr zeigt, welche seiner Seiten negativ war; ein Arkustangens mit zwei Argumenten behält beide Vorzeichen.',
  'It is off by 180 degrees at part of the places: the arctangent has lost the quadrant. An arctangent of two arguments keeps both signs.':
    'An einem Teil der Stellen liegt sie um 180 Grad daneben: der Arkustangens hat den Quadranten verloren. Ein Arkustangens mit zwei Argumenten behält beide Vorzeichen.',
  'The constant {} is off; {} fits.': 'Die Konstante {1} ist falsch; {2} passt.',
  'It is off by the same everywhere: {} must be added.':
    'Sie liegt überall um dasselbe daneben: {} müssen addiert werden.',
  'It is off by the same everywhere: {} must be subtracted.':
    'Sie liegt überall um dasselbe daneben: {} müssen abgezogen werden.',
  '{} degrees': '{} Grad',
  'It is right but for a factor: it must be multiplied by {}.':
    'Sie stimmt bis auf einen Faktor: mit {} multiplizieren.',
};

const REMARKS: Pairs = {
  'Sine, cosine and tangent are read in radians, because the formula converts between degrees and radians.':
    'Sinus, Kosinus und Tangens werden im Bogenmaß gelesen, weil die Formel zwischen Grad und Bogenmaß umrechnet.',
  'Sine, cosine and tangent are read in radians, as spreadsheets and programs do.':
    'Sinus, Kosinus und Tangens werden im Bogenmaß gelesen, wie in Tabellenkalkulationen und Programmen.',
  'Sine, cosine and tangent are read in degrees; a spreadsheet would take radians.':
    'Sinus, Kosinus und Tangens werden in Grad gelesen; eine Tabellenkalkulation nähme das Bogenmaß.',
  'ATAN2 is read as spreadsheets do: x first, then y.':
    'ATAN2 wird gelesen wie in Tabellenkalkulationen: erst x, dann y.',
  'atan2 is read as programs do: y first, then x.':
    'atan2 wird gelesen wie in Programmen: erst y, dann x.',
  'log is read as the natural logarithm, as in a program.':
    'log wird als natürlicher Logarithmus gelesen, wie in einem Programm.',
  'log is read as the logarithm to base 10.': 'log wird als Zehnerlogarithmus gelesen.',
  'The minus before a power is read as spreadsheets do: -x^2 is (-x)^2.':
    'Das Minus vor einer Potenz wird gelesen wie in Tabellenkalkulationen: -x^2 ist (-x)^2.',
  'The minus before a power is read as on paper: -x^2 is -(x^2).':
    'Das Minus vor einer Potenz wird gelesen wie auf Papier: -x^2 ist -(x^2).',
  'Factors without a sign between them after a slash are read as one divisor: a/bc is a/(bc).':
    'Faktoren ohne Zeichen dazwischen nach einem Schrägstrich gelten als ein Nenner: a/bc ist a/(bc).',
  'Only the first factor after a slash is read as the divisor: a/bc is (a/b)c.':
    'Nur der erste Faktor nach einem Schrägstrich gilt als Nenner: a/bc ist (a/b)c.',
  'A function without brackets is taken of the whole quotient after it.':
    'Eine Funktion ohne Klammern gilt für den ganzen Quotienten danach.',
  'A function without brackets is taken of what stands before the slash.':
    'Eine Funktion ohne Klammern gilt für das, was vor dem Schrägstrich steht.',
  'Units behind numbers are passed over; nothing is converted.':
    'Einheiten hinter Zahlen werden übergangen; es wird nichts umgerechnet.',
  '{} is read with a decimal comma.': '{} wird mit Dezimalkomma gelesen.',
  '{} is read as {}.': '{1} wird gelesen als {2}.',
  'the {}': '{}',
  'the longitude difference, satellite less station, east positive':
    'Längendifferenz, Satellit minus Standort, Ost positiv',
};

const ERRORS: Pairs = {
  'an arithmetic expression': 'ein Rechenausdruck',
  'of at most {} characters': 'höchstens {} Zeichen lang',
  'readable: at its end {} is expected': 'etwas Lesbares: am Ende wird erwartet: {}',
  'readable: at its beginning {} is expected': 'etwas Lesbares: am Anfang wird erwartet: {}',
  'readable: after {} {} is expected': 'etwas Lesbares: nach {1} wird erwartet: {2}',
  "readable: after '{}' (character {}) {} is expected":
    'etwas Lesbares: nach „{1}“ (Zeichen {2}) wird erwartet: {3}',
  'a number, a name, an operator or a bracket':
    'eine Zahl, ein Name, ein Rechenzeichen oder eine Klammer',
  'a number, a name or a bracket': 'eine Zahl, ein Name oder eine Klammer',
  'an operator': 'ein Rechenzeichen',
  'an operator or the end': 'ein Rechenzeichen oder das Ende',
  'the end': 'das Ende',
  'an opening bracket': 'eine öffnende Klammer',
  "{} or the closing bracket '{}'": '{1} oder die schließende Klammer „{2}“',
  'a number within the range of a computer': 'eine Zahl, die ein Rechner darstellen kann',
  'a number with one decimal comma': 'eine Zahl mit einem Dezimalkomma',
  'one formula': 'eine einzige Formel',
  'two sides in brackets': 'zwei Seiten in Klammern',
  "what '{}' is taken of": 'wovon „{}“ genommen wird',
  'is the formula cut off?': 'ist die Formel abgeschnitten?',
  'a formula has no such sign': 'ein solches Zeichen gibt es in einer Formel nicht',
  'is a * or a decimal point missing?': 'fehlt ein * oder ein Dezimalpunkt?',
  'is there one bracket too many?': 'ist eine Klammer zu viel?',
  'are its brackets missing?': 'fehlen die Klammern?',
  'its brackets are empty': 'die Klammern sind leer',
  'is a digit missing beside the decimal point?': 'fehlt neben dem Dezimalpunkt eine Ziffer?',
  'write ; between the arguments of a function':
    'zwischen die Argumente einer Funktion ein ; schreiben',
  'several are given and none of them uses the others':
    'mehrere sind angegeben, und keine verwendet die anderen',
  'a formula has one side; leave out the sign =': 'eine Formel hat eine Seite; das = weglassen',
  'is a decimal comma meant? Then write it between two digits without a space':
    'ist ein Dezimalkomma gemeint? Dann ohne Leerzeichen zwischen zwei Ziffern schreiben',
  'is a decimal comma meant? Then write it without a space':
    'ist ein Dezimalkomma gemeint? Dann ohne Leerzeichen schreiben',
  'a name that is known here ({})': 'ein hier bekannter Name ({})',
  "'{}' is unknown; say what it stands for, as in {} = …":
    '„{1}“ ist unbekannt; angeben, wofür es steht, etwa {2} = …',
  "'{}' is no function that is known here": '„{}“ ist hier keine bekannte Funktion',
  'the smaller number first ({} comes second)': 'die kleinere Zahl zuerst ({} kommt danach)',
  'were the ends swapped?': 'sind die Enden vertauscht?',
};

const pairs: Pairs = {
  ...QUANTITIES,
  ...SMALL,
  ...NAMED,
  ...WITH_ARTICLE,
  ...AXES,
  ...FUNCTIONS,
  ...INPUTS,
  ...RULES,
  ...MEANINGS,
  ...VERDICTS,
  ...DIAGNOSES,
  ...REMARKS,
  ...ERRORS,
};

export default pairs;

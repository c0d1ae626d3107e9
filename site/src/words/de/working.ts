/** German for the working: titles, meanings, units and reasons of the worked solutions. */

import type { Pairs } from '../../lib/language/language.js';

const titles: Pairs = {
  // Pointing and sky.
  'In which direction does the satellite stand?': 'In welcher Richtung steht der Satellit?',
  'At what elevation does the satellite stand?': 'In welcher Elevation steht der Satellit?',
  'How far away is the satellite?': 'Wie weit ist der Satellit entfernt?',
  'By how much is the feed turned (linear polarization)?':
    'Wie weit ist das Feed gedreht (lineare Polarisation)?',
  'At what elevation does the satellite stand over a round Earth?':
    'In welcher Elevation steht der Satellit über einer kugelrunden Erde?',
  'What is the declination of a polar mount (axis parallel to the axis of the Earth, round Earth)?':
    'Welche Deklination hat eine Polarmontierung (Achse parallel zur Erdachse, kugelrunde Erde)?',
  'How much room is left between the beam and the obstruction?':
    'Wie viel Platz bleibt zwischen Keule und Hindernis?',
  'What must the compass show?': 'Was muss der Kompass zeigen?',
  'What is the offset angle of this reflector?': 'Welchen Offsetwinkel hat dieser Reflektor?',
  'How does the face of an offset reflector stand?':
    'Wie steht die Öffnung eines Offset-Reflektors?',
  'How high does the obstruction stand in the sky?': 'Wie hoch ragt das Hindernis in den Himmel?',
  'Which geocentric latitude belongs to this geodetic one?':
    'Welche geozentrische Breite gehört zu dieser geodätischen?',

  // Antenna.
  'How wide is the beam?': 'Wie breit ist die Keule?',
  'What is the gain of the reflector?': 'Welchen Gewinn hat der Reflektor?',
  'What does the pointing error cost?': 'Was kostet der Ausrichtfehler?',
  'What does the rough surface cost?': 'Was kostet die raue Oberfläche?',
  'Where does the far field begin?': 'Wo beginnt das Fernfeld?',
  'What does a wrongly turned feed cost?': 'Was kostet ein falsch gedrehtes Feed?',

  // Rain and link.
  'How high does the rain reach?': 'Wie hoch reicht der Regen?',
  'How much does rain take on each kilometre (12 GHz, circular)?':
    'Wie viel nimmt der Regen auf jedem Kilometer (12 GHz, zirkular)?',
  'How much rain attenuation is exceeded for a share of the year?':
    'Welche Regendämpfung wird in einem Teil des Jahres überschritten?',
  'How much do rain, cloud, scintillation and gases take together?':
    'Wie viel nehmen Regen, Wolken, Szintillation und Gase zusammen?',
  'How warm does the sky get in rain?': 'Wie warm wird der Himmel bei Regen?',
  'How much is lost on the way through free space?':
    'Wie viel geht auf dem Weg durch den freien Raum verloren?',
  'Which noise temperature belongs to this noise figure?':
    'Welche Rauschtemperatur gehört zu diesem Rauschmaß?',
  'How much noise does the receiver see in all?':
    'Wie viel Rauschen sieht der Empfänger insgesamt?',
  'What is the figure of merit G/T?': 'Wie groß ist die Güte G/T?',
  'What margin does the link have in clear sky (QPSK 3/4, noise figure 0.7 dB, efficiency 0.65)?':
    'Welche Reserve hat die Strecke bei klarem Himmel (QPSK 3/4, Rauschmaß 0,7 dB, Wirkungsgrad 0,65)?',
  'Which Es/N0 belongs to this C/N0?': 'Welches Es/N0 gehört zu diesem C/N0?',
  'Which Eb/N0 belongs to this C/N0?': 'Welches Eb/N0 gehört zu diesem C/N0?',
  'Which C/N is left of uplink and downlink together?':
    'Welches C/N bleibt von Aufwärts- und Abwärtsstrecke zusammen?',

  // Peak, null, axes.
  'Which level is the signal’s own?': 'Welcher Pegel ist der des Signals allein?',
  'Where is the peak between two readings, if the beamwidth is known?':
    'Wo liegt das Maximum zwischen zwei Messwerten, wenn die Halbwertsbreite bekannt ist?',
  'Where is the peak of three equally spaced readings?':
    'Wo liegt das Maximum dreier Messwerte in gleichem Abstand?',
  'What is lost at the middle of three equally spaced readings?':
    'Was geht in der Mitte dreier Messwerte in gleichem Abstand verloren?',
  'How many turns back between two levels that are not equal?':
    'Wie viele Umdrehungen zurück zwischen zwei ungleichen Pegeln?',
  'Which pointing error would explain this loss?':
    'Welcher Ausrichtfehler würde diesen Verlust erklären?',
  'Where is the null between two rotations of equal cross-polar level?':
    'Wo liegt das Minimum zwischen zwei Drehungen mit gleichem kreuzpolarem Pegel?',
  'Which isolation is left at least (error: that of the step and twice that of the flicker)?':
    'Welche Isolation bleibt mindestens (Fehler: der des Schritts und der doppelte des Flackerns)?',
  'How much of the loss does each further peaking of an axis leave?':
    'Welchen Teil des Verlusts lässt jedes weitere Einstellen einer Achse übrig?',
  'What is lost after both axes were peaked once?':
    'Was ist noch verloren, wenn beide Achsen einmal eingestellt sind?',
  'How many turns back to the peak?': 'Wie viele Umdrehungen zurück zum Maximum?',

  // Behind the antenna.
  'How much does the cable take?': 'Wie viel nimmt das Kabel?',
  'How much does a cable of this type take, as warm as it is?':
    'Wie viel nimmt ein Kabel dieser Art bei seiner Temperatur?',
  'Which level is left at the outlet?': 'Welcher Pegel bleibt an der Antennendose?',
  'Which level is left at the outlet behind amplifier, cables, splitters and taps?':
    'Welcher Pegel bleibt an der Antennendose hinter Verstärker, Kabeln, Verteilern und Abzweigern?',
  'Which level in dBm is this at 75 ohm?': 'Welcher Pegel in dBm ist das an 75 Ohm?',

  // Verdicts and causes.
  'From which reading on does the level conform (risk 5 %)?':
    'Ab welchem Messwert ist der Pegel konform (Risiko 5 %)?',
  'How sure is the mean of three readings?': 'Wie sicher ist das Mittel aus drei Messwerten?',
  'From which reading on does the level conform, by the rule agreed?':
    'Ab welchem Messwert ist der Pegel nach der vereinbarten Regel konform?',
  'How probable is it that the level conforms?': 'Wie wahrscheinlich ist der Pegel konform?',
  'How probable is it that the level conforms, by the mean of few readings?':
    'Wie wahrscheinlich ist der Pegel nach dem Mittel weniger Messwerte konform?',
  'Two causes, one more observation: how probable is the first now?':
    'Zwei Ursachen, eine Beobachtung mehr: wie wahrscheinlich ist nun die erste?',
  'A level was held to the mast: how probable is it that the mast leans?':
    'Eine Wasserwaage wurde an den Mast gehalten: wie wahrscheinlich steht er schief?',
};

const meanings: Pairs = {
  // Pointing and sky.
  'geodetic latitude, north positive': 'geodätische Breite, Nord positiv',
  'longitude of the station, east positive': 'Länge des Standorts, Ost positiv',
  'longitude of the slot, east positive': 'Länge der Orbitposition, Ost positiv',
  'height of the station above the ellipsoid': 'Höhe des Standorts über dem Ellipsoid',
  'semi-major axis of the ellipsoid': 'große Halbachse des Ellipsoids',
  'eccentricity squared of the ellipsoid': 'Quadrat der Exzentrizität des Ellipsoids',
  'radius of the orbit': 'Radius der Umlaufbahn',
  'radius of curvature across the meridian': 'Krümmungsradius quer zum Meridian',
  'way out from the axis': 'Strecke von der Erdachse weg',
  'way along the axis': 'Strecke entlang der Erdachse',
  'line of sight, east': 'Sichtlinie, nach Osten',
  'line of sight, north': 'Sichtlinie, nach Norden',
  'line of sight, up': 'Sichtlinie, nach oben',
  'line of sight, level': 'Sichtlinie, waagrecht',
  'azimuth from true north': 'Azimut ab geografisch Nord',
  'geometric elevation': 'geometrische Elevation',
  'slant range': 'Entfernung',
  'tilt of the satellite': 'Polarisationswinkel des Satelliten',
  'turn of the Earth’s axis from the vertical, clockwise positive as seen from behind':
    'Drehung der Erdachse gegen die Senkrechte, von hinten gesehen im Uhrzeigersinn positiv',
  'skew, from −90° to below 90°': 'Polarisationswinkel, ab −90° und unter 90°',
  'radius of the Earth': 'Erdradius',
  'longitude of the satellite east of the station':
    'Länge des Satelliten, vom Standort aus nach Osten',
  'angle at the centre of the Earth': 'Winkel am Erdmittelpunkt',
  elevation: 'Elevation',
  'latitude, north positive': 'Breite, Nord positiv',
  'angle of the beam below the plane across the axis':
    'Winkel der Keule unter der Ebene quer zur Achse',
  'level distance to the obstruction': 'waagrechter Abstand zum Hindernis',
  'height of its top': 'Höhe seiner Oberkante',
  'height of the middle of the reflector': 'Höhe der Reflektormitte',
  'elevation of the satellite': 'Elevation des Satelliten',
  'diameter of the reflector': 'Durchmesser des Reflektors',
  'elevation of the top': 'Elevation der Oberkante',
  'clear sky over the top': 'freier Himmel über der Oberkante',
  'room between top and beam axis, across the beam':
    'Platz zwischen Oberkante und Achse der Keule, quer zur Keule',
  'room between top and edge of the beam, negative if it is cut':
    'Platz zwischen Oberkante und Rand der Keule, negativ, wenn sie angeschnitten ist',
  'true azimuth': 'Azimut ab geografisch Nord',
  'declination, east positive': 'Missweisung, Ost positiv',
  'magnetic bearing': 'Kompasspeilung',
  'width of the rim': 'Breite des Rands',
  'height of the rim': 'Höhe des Rands',
  'offset angle': 'Offsetwinkel',
  'lean of the face from the vertical, backwards positive':
    'Neigung der Öffnung gegen die Senkrechte, nach hinten positiv',
  'height of its top above the eye': 'Höhe seiner Oberkante über dem Auge',
  'level distance': 'waagrechter Abstand',
  'elevation of the skyline': 'Elevation der Horizontlinie',
  'geocentric latitude': 'geozentrische Breite',

  // Antenna.
  frequency: 'Frequenz',
  'speed of light in metres and nanoseconds': 'Lichtgeschwindigkeit in Metern und Nanosekunden',
  wavelength: 'Wellenlänge',
  'half-power beamwidth': 'Halbwertsbreite',
  'aperture efficiency': 'Wirkungsgrad der Apertur',
  'gain of a lossless, evenly lit aperture':
    'Gewinn einer verlustlosen, gleichmäßig ausgeleuchteten Apertur',
  'loss by the aperture efficiency': 'Verlust durch den Wirkungsgrad der Apertur',
  gain: 'Gewinn',
  'pointing error': 'Ausrichtfehler',
  'pointing loss': 'Ausrichtverlust',
  'root-mean-square error of the surface': 'quadratischer Mittelwert der Oberflächenfehler',
  'surface loss': 'Verlust durch die Oberfläche',
  'far-field distance': 'Beginn des Fernfelds',
  'rotation error': 'Fehler der Drehung',
  'polarization mismatch loss': 'Verlust durch falsche Polarisation',

  // Rain and link.
  'height of the 0 degree isotherm': 'Höhe der Nullgradgrenze',
  'rain height': 'Regenhöhe',
  'rain rate': 'Regenrate',
  'k, horizontal': 'k, horizontal',
  'k, vertical': 'k, vertikal',
  'alpha, horizontal': 'Alpha, horizontal',
  'alpha, vertical': 'Alpha, vertikal',
  'k for circular polarization': 'k für zirkulare Polarisation',
  'alpha for circular polarization': 'Alpha für zirkulare Polarisation',
  'specific attenuation': 'Dämpfung je Kilometer',
  'rain rate exceeded for 0.01 %': 'Regenrate, in 0,01 % der Zeit überschritten',
  'height of the station': 'Höhe des Standorts',
  'share of the year': 'Teil des Jahres',
  'tilt of the polarization, 45 for circular': 'Neigung der Polarisation, 45 für zirkular',
  'slant path': 'schräger Weg',
  'its projection': 'seine Projektion',
  'k for this path and polarization': 'k für diesen Weg und diese Polarisation',
  'alpha for this path and polarization': 'Alpha für diesen Weg und diese Polarisation',
  'horizontal reduction': 'waagrechter Minderungsfaktor',
  'path through the rain cell': 'Weg durch die Regenzelle',
  'degrees nearer than 36 to the equator': 'Grad, um die die Breite unter 36 liegt',
  '1 nearer than 36 degrees to the equator and below 1 % of the year, otherwise 0':
    '1 bei einer Breite unter 36 Grad und weniger als 1 % des Jahres, sonst 0',
  '1 below 25 degrees of elevation, otherwise 0': '1 unter 25 Grad Elevation, sonst 0',
  'vertical adjustment': 'senkrechter Anpassungsfaktor',
  'effective path': 'wirksamer Weg',
  'attenuation exceeded for 0.01 %': 'Dämpfung, in 0,01 % der Zeit überschritten',
  'exponent of latitude and elevation': 'Exponent aus Breite und Elevation',
  'attenuation exceeded for p': 'Dämpfung, in p Prozent der Zeit überschritten',
  'attenuation by rain': 'Dämpfung durch Regen',
  'attenuation by cloud': 'Dämpfung durch Wolken',
  'fade by scintillation': 'Schwund durch Szintillation',
  'attenuation by gases': 'Dämpfung durch Gase',
  'rain and cloud': 'Regen und Wolken',
  'attenuation by all together': 'Dämpfung durch alles zusammen',
  attenuation: 'Dämpfung',
  'mean radiating temperature': 'mittlere Strahlungstemperatur',
  'cosmic background': 'kosmischer Hintergrund',
  'share of the medium': 'Beitrag des Mediums',
  'share of the background': 'Beitrag des Hintergrunds',
  'sky noise temperature': 'Rauschtemperatur des Himmels',
  'loss at 1 GHz and 1 km': 'Verlust bei 1 GHz und 1 km',
  'frequency term': 'Anteil der Frequenz',
  'distance term': 'Anteil der Entfernung',
  'free-space loss': 'Freiraumdämpfung',
  'noise figure': 'Rauschmaß',
  'reference temperature': 'Bezugstemperatur',
  'noise temperature': 'Rauschtemperatur',
  'antenna noise': 'Rauschen der Antenne',
  'feed loss': 'Verlust des Feeds',
  'receiver noise': 'Rauschen des Empfängers',
  'temperature of the feed': 'Temperatur des Feeds',
  'antenna noise behind the feed': 'Rauschen der Antenne hinter dem Feed',
  'noise of the feed itself': 'Rauschen des Feeds selbst',
  'system noise': 'Systemrauschen',
  'antenna gain': 'Antennengewinn',
  'system noise at the receiver': 'Systemrauschen am Empfänger',
  'figure of merit': 'Güte G/T',
  'power that the satellite sends towards the station':
    'Leistung, die der Satellit zum Standort sendet',
  'symbol rate': 'Symbolrate',
  'system noise of the terminal in clear sky': 'Systemrauschen der Anlage bei klarem Himmel',
  'Boltzmann constant': 'Boltzmann-Konstante',
  'threshold of the mode': 'Schwelle des Modus',
  'carrier over noise density': 'Träger zu Rauschdichte',
  'energy per symbol over noise density': 'Energie je Symbol zu Rauschdichte',
  margin: 'Reserve',
  'useful bits per symbol': 'Nutzbits je Symbol',
  'energy per useful bit over noise density': 'Energie je Nutzbit zu Rauschdichte',
  'carrier to noise of the uplink': 'Träger-Rausch-Abstand der Aufwärtsstrecke',
  'carrier to noise of the downlink': 'Träger-Rausch-Abstand der Abwärtsstrecke',
  'carrier to noise of both': 'Träger-Rausch-Abstand beider zusammen',

  // Peak, null, axes.
  'level as read': 'abgelesener Pegel',
  'level of the noise alone': 'Pegel des Rauschens allein',
  'level without the noise': 'Pegel ohne das Rauschen',
  'first place': 'erste Stelle',
  'level there': 'Pegel dort',
  'second place': 'zweite Stelle',
  'level at the second place': 'Pegel an der zweiten Stelle',
  'half way between the places': 'Mitte zwischen den Stellen',
  peak: 'Maximum',
  'middle place': 'mittlere Stelle',
  'step between the places': 'Abstand der Stellen',
  'level one step below': 'Pegel einen Schritt darunter',
  'level at the middle place': 'Pegel an der mittleren Stelle',
  'level one step above': 'Pegel einen Schritt darüber',
  'bend of the three levels': 'Krümmung der drei Pegel',
  'peak from the middle place, upwards positive':
    'Maximum ab der mittleren Stelle, nach oben positiv',
  'pointing loss at the middle place': 'Ausrichtverlust an der mittleren Stelle',
  'highest level on the way': 'höchster Pegel unterwegs',
  'level after turning out': 'Pegel nach dem Hinausdrehen',
  'level on the far side': 'Pegel auf der anderen Seite',
  'turns back through the peak': 'Umdrehungen zurück, über das Maximum hinweg',
  'drop at the place turned out to': 'Abfall nach dem Hinausdrehen',
  'drop on the far side': 'Abfall auf der anderen Seite',
  'turns to turn back': 'Umdrehungen, die zurückzudrehen sind',
  'level missing': 'fehlender Pegel',
  'rotation at the first place': 'Drehung an der ersten Stelle',
  'rotation at the second place': 'Drehung an der zweiten Stelle',
  'rotation of the null': 'Drehung des Minimums',
  'step of the display': 'Schritt der Anzeige',
  'flicker, standard deviation of one reading':
    'Flackern, Standardabweichung eines einzelnen Messwerts',
  'half the way': 'halber Weg',
  'share of the tangent that one step is worth': 'Teil des Tangens, den ein Schritt ausmacht',
  'largest error from the step': 'größter Fehler durch den Schritt',
  'twice what the flicker adds': 'das Doppelte dessen, was das Flackern beiträgt',
  'error to reckon with': 'Fehler, mit dem zu rechnen ist',
  'isolation left at least': 'Entkopplung, die mindestens bleibt',
  'beamwidth along the narrow axis': 'Halbwertsbreite entlang der schmalen Achse',
  'beamwidth along the wide axis': 'Halbwertsbreite entlang der breiten Achse',
  'narrow axis from the first axis of the mount towards the second':
    'Lage der schmalen Achse, von der ersten Achse der Halterung zur zweiten hin',
  'fall along the first axis': 'Abfall entlang der ersten Achse',
  'fall along the second axis': 'Abfall entlang der zweiten Achse',
  'fall that both share': 'gemeinsamer Abfall beider',
  'coupling of the axes': 'Kopplung der Achsen',
  'loss left by each further peaking': 'Verlust, den jedes weitere Einstellen übrig lässt',
  'start from the peak, first axis': 'Anfang ab dem Maximum, erste Achse',
  'start from the peak, second axis': 'Anfang ab dem Maximum, zweite Achse',
  'loss at the start': 'Verlust am Anfang',
  'first axis after its peaking': 'erste Achse nach ihrem Einstellen',
  'loss after the first axis': 'Verlust nach der ersten Achse',
  'loss after the second axis': 'Verlust nach der zweiten Achse',
  'turns back until the same level returned':
    'Umdrehungen zurück, bis der gleiche Pegel wieder da war',
  'turns lost in the backlash': 'Umdrehungen, die im Spiel verloren gehen',
  'turns to turn back, the lost ones included':
    'Umdrehungen, die zurückzudrehen sind, die verlorenen eingerechnet',

  // Behind the antenna.
  length: 'Länge',
  'intermediate frequency': 'Zwischenfrequenz',
  'loss by skin effect at 1000 MHz': 'Verlust durch Skineffekt bei 1000 MHz',
  'loss in the dielectric at 1000 MHz': 'Verlust im Dielektrikum bei 1000 MHz',
  'cable loss': 'Kabeldämpfung',
  'temperature of the cable': 'Temperatur des Kabels',
  'growth of the loss': 'Zunahme der Dämpfung',
  'loss of 100 m at 20 °C': 'Dämpfung von 100 m bei 20 Grad Celsius',
  'growth with the temperature': 'Zunahme mit der Temperatur',
  'level behind the outdoor unit': 'Pegel hinter der Außeneinheit',
  'splitter loss': 'Dämpfung des Verteilers',
  'outlet loss': 'Dämpfung der Antennendose',
  'level at the outlet': 'Pegel an der Antennendose',
  'gain of the amplifiers': 'Verstärkung der Verstärker',
  'tap loss': 'Dämpfung des Abzweigers',
  'loss of outlet, connectors and the like': 'Dämpfung von Dose, Steckern und dergleichen',
  'level behind the amplifiers': 'Pegel hinter den Verstärkern',
  level: 'Pegel',
  impedance: 'Impedanz',

  // Verdicts and causes.
  'lowest level that conforms': 'niedrigster konformer Pegel',
  'expanded uncertainty (k = 2)': 'erweiterte Messunsicherheit (k = 2)',
  'one-sided 95 % point of the normal distribution': 'einseitiger 95-%-Punkt der Normalverteilung',
  'guard band': 'Schutzband',
  'acceptance limit': 'Abnahmegrenze',
  'first reading': 'erster Messwert',
  'second reading': 'zweiter Messwert',
  'third reading': 'dritter Messwert',
  'standard uncertainty of the instrument': 'Standardunsicherheit des Geräts',
  mean: 'Mittel',
  'standard deviation of one reading': 'Standardabweichung eines einzelnen Messwerts',
  'its share in the mean': 'ihr Anteil am Mittel',
  'standard uncertainty of the mean': 'Standardunsicherheit des Mittels',
  'standard uncertainty of the reading': 'Standardunsicherheit des Messwerts',
  'guard band in standard uncertainties (point of the normal or t distribution for the risk; 2 for a guard band of U)':
    'Schutzband in Standardunsicherheiten (Punkt der Normal- oder t-Verteilung für das Risiko; 2 für ein Schutzband von U)',
  reading: 'Messwert',
  'distance from the limit in standard uncertainties':
    'Abstand vom Grenzwert in Standardunsicherheiten',
  'probability that the true level is above the limit (normal distribution, from its table)':
    'Wahrscheinlichkeit, dass der wahre Pegel über dem Grenzwert liegt (Normalverteilung, aus ihrer Tabelle)',
  'degrees of freedom of the uncertainty': 'Freiheitsgrade der Messunsicherheit',
  'probability that the true level is above the limit (Student’s t, from its table)':
    'Wahrscheinlichkeit, dass der wahre Pegel über dem Grenzwert liegt (t-Verteilung, aus ihrer Tabelle)',
  'weight of the first cause before': 'Gewicht der ersten Ursache vorher',
  'weight of the second cause before': 'Gewicht der zweiten Ursache vorher',
  'how many times likelier the first cause makes what was seen than the second':
    'wievielmal wahrscheinlicher die erste Ursache das Gesehene macht als die zweite',
  'left to all other causes, after': 'Rest für alle anderen Ursachen, nachher',
  'odds of the first over the second, after': 'Verhältnis der ersten zur zweiten, nachher',
  'probability of the first cause': 'Wahrscheinlichkeit der ersten Ursache',
  'weight of a leaning mast before': 'Gewicht eines schiefen Masts vorher',
  'weight of a mispointed antenna before': 'Gewicht einer falsch ausgerichteten Antenne vorher',
  'lean as read': 'abgelesene Neigung',
  'lean if the mast leans': 'Neigung, wenn der Mast schief steht',
  'lean read off a plumb mast': 'an einem lotrechten Mast abgelesene Neigung',
  'standard deviation of the level': 'Standardabweichung der Wasserwaage',
  'share of wild readings allowed for': 'Anteil grob falscher Messwerte, mit dem gerechnet wird',
  'share of sound ones': 'Anteil der brauchbaren',
  'share of a reading so far from this, mast leaning':
    'Anteil eines so weit abweichenden Messwerts, Mast schief',
  'share of a reading so far from this, antenna mispointed':
    'Anteil eines so weit abweichenden Messwerts, Antenne falsch ausgerichtet',
  'likelihood ratio': 'Likelihood-Verhältnis',
  'probability that the mast leans': 'Wahrscheinlichkeit, dass der Mast schief steht',
};

const units: Pairs = {
  percent: '%',
  'percent/K': '%/K',
  turns: 'Umdrehungen',
  'degrees Celsius': 'Grad Celsius',
  'dB/deg²': 'dB/(°)²',
  dBuV: 'dBµV',
  ohm: 'Ohm',
};

/** Tuning, modulation error, wind, transmitting. */
const reception: Pairs = {
  'How far does a steel mast lean in the wind?': 'Wie weit neigt sich ein Stahlmast im Wind?',
  'How much must a mount on a flat roof weigh so that it does not slide?':
    'Wie schwer muss eine Halterung auf einem Flachdach sein, damit sie nicht rutscht?',
  rad: 'rad',
  'What does a station send past its satellite, by the side-lobe line of 29 - 25 log?':
    'Was sendet eine Station an ihrem Satelliten vorbei, nach der Nebenkeulenlinie 29 - 25 log?',
  'What discrimination does a circular wave have that is not quite round?':
    'Welche Kreuzpolarisationsentkopplung hat eine zirkulare Welle, die nicht ganz rund ist?',
  'axial ratio': 'Achsenverhältnis',
  'axial ratio as a ratio of fields': 'Achsenverhältnis als Verhältnis der Felder',
  'cross-polar discrimination': 'Kreuzpolarisationsentkopplung',
  'What level does a transmitter near by bring into a screened cable?':
    'Welchen Pegel bringt ein naher Sender in ein geschirmtes Kabel?',
  'EIRP of the transmitter': 'EIRP des Senders',
  'distance of the transmitter': 'Entfernung des Senders',
  'screening of the cable': 'Schirmmaß des Kabels',
  'field of 1 mW at 1 m': 'Feld von 1 mW in 1 m Entfernung',
  'matched antenna of 0 dBi at 1 MHz, 75 ohm': 'angepasste Antenne mit 0 dBi bei 1 MHz, 75 Ohm',
  'gain of a half-wave dipole': 'Gewinn eines Halbwellendipols',
  'field strength in dBµV/m': 'Feldstärke in dBµV/m',
  'level that a dipole would take from it': 'Pegel, den ein Dipol daraus aufnähme',
  'level in the cable': 'Pegel im Kabel',
  'How far may the difference of two instruments be off, read at three points?':
    'Um wie viel kann die Differenz zweier Messgeräte danebenliegen, an drei Punkten abgelesen?',
  'first less second, at the first point': 'erstes minus zweites, am ersten Punkt',
  'at the second point': 'am zweiten Punkt',
  'at the third point': 'am dritten Punkt',
  'coverage factor for 2 degrees of freedom': 'Erweiterungsfaktor für 2 Freiheitsgrade',
  'mean difference': 'mittlere Differenz',
  'standard deviation of one difference': 'Standardabweichung einer Differenz',
  'half width of the 95 % interval': 'halbe Breite des 95-%-Intervalls',
  'How probably is a lot accepted in which some installations are bad?':
    'Wie wahrscheinlich wird ein Los angenommen, in dem einige Anlagen schlecht sind?',
  'installations looked at': 'geprüfte Anlagen',
  'share of bad installations in the lot': 'Anteil schlechter Anlagen im Los',
  'share of bad ones as a ratio': 'Anteil schlechter als Verhältnis',
  'probability that none of the sample is bad':
    'Wahrscheinlichkeit, dass in der Stichprobe keine schlecht ist',
  'probability that exactly one is': 'Wahrscheinlichkeit, dass genau eine es ist',
  'probability of acceptance with at most one bad':
    'Annahmewahrscheinlichkeit bei höchstens einer schlechten',
  'At what intermediate frequency is the carrier found?':
    'Auf welcher Zwischenfrequenz liegt der Träger?',
  'Which Es/N0 lies behind the MER that the instrument shows?':
    'Welches Es/N0 steht hinter dem MER, das das Messgerät zeigt?',
  'radio frequency': 'Radiofrequenz',
  'local oscillator': 'Lokaloszillator',
  'difference in gigahertz': 'Differenz in Gigahertz',
  'MER shown': 'angezeigtes MER',
  'most that the instrument can show': 'höchstes MER, das das Messgerät zeigen kann',
  'error power shown': 'angezeigte Fehlerleistung',
  'error power of the instrument itself': 'Fehlerleistung des Messgeräts selbst',
  'energy per symbol over noise density, Es/N0': 'Energie je Symbol über Rauschdichte, Es/N0',
  'speed of the wind': 'Windgeschwindigkeit',
  'height of its centre above the foot': 'Höhe seiner Mitte über dem Fuß',
  'density of air': 'Dichte der Luft',
  'force coefficient of a solid dish': 'Kraftbeiwert eines geschlossenen Reflektors',
  'pressure of the wind': 'Winddruck',
  'area of the reflector': 'Fläche des Reflektors',
  'force of the wind': 'Windkraft',
  'moment at the foot of the mast': 'Moment am Fuß des Masts',
  'What moment does the wind bring to the foot of the mast?':
    'Welches Moment bringt der Wind an den Fuß des Masts?',
  'friction on the roof': 'Reibung auf dem Dach',
  'acceleration of gravity': 'Fallbeschleunigung',
  'safety factor': 'Sicherheitsfaktor',
  'weight that friction needs': 'Gewichtskraft, die die Reibung braucht',
  'total mass, mount included': 'gesamte Masse, samt Halterung',
  'force at its head': 'Kraft an seinem Kopf',
  'free length': 'freie Länge',
  'outside diameter': 'Außendurchmesser',
  'wall thickness': 'Wanddicke',
  "Young's modulus of steel": 'Elastizitätsmodul von Stahl',
  'second moment of area': 'Flächenträgheitsmoment',
  slope: 'Neigung',
  'slope in degrees': 'Neigung in Grad',
  'power of the amplifier': 'Leistung des Verstärkers',
  'loss to the antenna': 'Verlust bis zur Antenne',
  'reference bandwidth': 'Bezugsbandbreite',
  'power at the flange': 'Leistung am Flansch',
  'EIRP density': 'EIRP-Dichte',
  'What EIRP density does a station send in 40 kHz?':
    'Welche EIRP-Dichte sendet eine Station in 40 kHz?',
  'angle off the axis': 'Winkel neben der Achse',
  'density at the flange': 'Dichte am Flansch',
  'gain at the angle': 'Gewinn bei diesem Winkel',
  'density sent at the angle': 'bei diesem Winkel gesendete Dichte',
  force: 'Kraft',
  diameter: 'Durchmesser',
  'gain of the antenna': 'Gewinn der Antenne',
};

const reasons: Pairs = {
  'below-horizon': 'der Satellit steht unter dem Horizont',
  overhead: 'der Satellit steht im Zenit',
  'below-5-degrees': 'der Satellit steht tiefer als 5°',
  'straight-up': 'die Antenne blickt senkrecht nach oben',
  'no-arc': 'von hier ist kein Bogen zu sehen',
  'wider-than-high': 'der Reflektor ist nicht höher als breit',
  'no-rain-on-the-path': 'auf dem Weg regnet es nicht',
  'no-signal-over-the-noise': 'kein Signal ragt aus dem Rauschen',
  'not-between-the-readings': 'das Maximum liegt nicht zwischen den Messwerten',
  'no-peak-among-the-readings': 'unter den Messwerten ist kein Maximum',
  'no-drop': 'der Pegel ist nicht abgefallen',
  'one-axis-is-enough': 'eine Achse genügt',
  blind: 'die Anzeige ist für diesen Weg zu grob',
};

const pairs: Pairs = { ...titles, ...meanings, ...units, ...reception, ...reasons };
export default pairs;

/** German for the slips: what went wrong, said to the learner. */

import type { Pairs } from '../../lib/language/language.js';

const direction: Pairs = {
  'A longitude has the wrong sign: east is positive, west is negative.':
    'Eine Länge hat das falsche Vorzeichen: Ost ist positiv, West negativ.',
  'The longitudes were subtracted the wrong way round: satellite less station.':
    'Die Längen sind verkehrt herum abgezogen: Satellit minus Standort.',
  'Latitude and longitude of the station were swapped.':
    'Breite und Länge des Standorts sind vertauscht.',
  'The longitude of the station was left out: what counts is the longitude of the satellite less that of the station.':
    'Die Länge des Standorts fehlt: Es zählt die Länge des Satelliten minus die des Standorts.',
  'The latitude has the wrong sign: north is positive, south is negative.':
    'Die Breite hat das falsche Vorzeichen: Nord ist positiv, Süd negativ.',
  'The declination was left out: the bearing is from the wrong north.':
    'Die Deklination fehlt: Die Peilung zählt vom falschen Nord.',
  'The declination was applied with the wrong sign.':
    'Die Deklination ist mit dem falschen Vorzeichen angebracht.',
  'The arctangent of a quotient loses the quadrant: take both sides with their signs.':
    'Der Arkustangens eines Quotienten verliert den Quadranten: Beide Seiten mit ihren Vorzeichen einsetzen.',
  'The two sides of the arctangent were exchanged: the angle counts from the other side.':
    'Die beiden Seiten im Arkustangens sind vertauscht: Der Winkel zählt von der anderen Seite.',
  'The direction was counted from south; azimuth counts from north, clockwise.':
    'Die Richtung ist ab Süd gezählt; der Azimut zählt ab Nord, im Uhrzeigersinn.',
  'The direction was counted anticlockwise; azimuth counts clockwise from north.':
    'Die Richtung ist gegen den Uhrzeigersinn gezählt; der Azimut zählt ab Nord im Uhrzeigersinn.',
  'The angle was counted from the vertical: elevation counts from the horizontal, 90 degrees less this.':
    'Der Winkel ist ab der Senkrechten gezählt: Die Elevation zählt ab der Waagerechten, also 90 Grad minus diesen Wert.',
  'The angle was counted from the other axis: 90 degrees apart.':
    'Der Winkel ist ab der anderen Achse gezählt: 90 Grad daneben.',
  'The satellite was taken as infinitely far: what the radius of the Earth takes off (6378 over 42 164) was left out.':
    'Der Satellit ist als unendlich fern angenommen: Der Abzug für den Erdradius (6378 durch 42 164) fehlt.',
  'Half the way between the two places was taken for the place itself: it counts from the first place, not from zero.':
    'Der halbe Weg zwischen den beiden Stellungen steht für die Stellung selbst: Er zählt ab der ersten Stellung, nicht ab null.',
  'The size is right and the sign is turned.': 'Der Betrag stimmt, das Vorzeichen ist verkehrt.',
};

const units: Pairs = {
  'The machine was in radians; the angles are in degrees.':
    'Der Rechner stand auf Bogenmaß; die Winkel sind in Grad.',
  'Minutes of arc were put in as decimals: 24 minutes are 0.4 degrees, so 46 degrees 24 minutes are 46.4, not 46.24.':
    'Bogenminuten sind als Dezimalen eingesetzt: 24 Minuten sind 0,4 Grad, also sind 46 Grad 24 Minuten 46,4 und nicht 46,24.',
  'The answer is in radians: times 180 over pi it is in degrees.':
    'Die Antwort ist im Bogenmaß: mal 180 durch π ergibt Grad.',
  'The frequency was put in in MHz; it belongs in GHz.':
    'Die Frequenz ist in MHz eingesetzt; sie gehört in GHz hinein.',
  'A distance was put in in metres; it belongs in kilometres.':
    'Eine Strecke ist in Metern eingesetzt; sie gehört in Kilometern hinein.',
  'A percentage was used as it stands; as a ratio it is a hundredth of that.':
    'Eine Prozentzahl ist unverändert eingesetzt; als Verhältnis ist sie ein Hundertstel davon.',
  'A level in dBm stands where one in dBW belongs, or the other way round: they differ by 30 dB.':
    'Ein Pegel in dBm steht dort, wo einer in dBW hingehört, oder umgekehrt: Der Unterschied sind 30 dB.',
  'A given was put in in another unit than the formula wants.':
    'Ein gegebener Wert ist in einer anderen Einheit eingesetzt, als die Formel verlangt.',
  'Put in in another unit ({}): {}.': 'In einer anderen Einheit eingesetzt ({}): {}.',
  'The power of ten that converts a unit was left out, or another one was taken.':
    'Die Zehnerpotenz zum Umrechnen der Einheit fehlt oder ist die falsche.',
};

const decibels: Pairs = {
  'A quantity that enters squared takes 20 log, not 10 log.':
    'Eine Größe, die im Quadrat eingeht, verlangt 20 log, nicht 10 log.',
  'A power takes 10 log, not 20 log.': 'Eine Leistung verlangt 10 log, nicht 20 log.',
  'Decibels need the decimal logarithm, not the natural one.':
    'Dezibel brauchen den Zehnerlogarithmus, nicht den natürlichen.',
  'Decibels of a power are turned back by 10^(dB/10), not by 10^(dB/20).':
    'Dezibel einer Leistung rechnet man mit 10^(dB/10) zurück, nicht mit 10^(dB/20).',
  'The sign of the exponent is turned: a loss or a ratio to be added as noise takes 10^(-dB/10).':
    'Das Vorzeichen im Exponenten ist verkehrt: Ein Verlust oder ein Verhältnis, das als Rauschen addiert wird, verlangt 10^(-dB/10).',
  'The smaller of the two was taken for both together: both noises add, so that less is left than the smaller one.':
    'Der kleinere der beiden Werte steht für beide zusammen: Beide Rauschanteile addieren sich, es bleibt also weniger als der kleinere.',
  'The decibels were averaged: it is powers that add.':
    'Die Dezibel sind gemittelt: Addiert werden Leistungen.',
  'The decibels themselves were added: that multiplies powers. Turn them into powers, add, and turn back.':
    'Die Dezibel selbst sind addiert: Das multipliziert Leistungen. In Leistungen umrechnen, addieren, zurückrechnen.',
  'The decibels themselves were subtracted: that divides powers. Turn them into powers, subtract, and turn back.':
    'Die Dezibel selbst sind subtrahiert: Das teilt Leistungen. In Leistungen umrechnen, subtrahieren, zurückrechnen.',
  'A plain number was added to decibels: take 10 log of it first.':
    'Eine reine Zahl ist zu Dezibel addiert: erst 10 log davon nehmen.',
  'A plain number was added to decibels, take the logarithm first: {}.':
    'Eine reine Zahl ist zu Dezibel addiert, erst den Logarithmus nehmen: {}.',
  'Decibels were used as a plain ratio: turn them back by 10^(dB/10) first.':
    'Dezibel sind als reines Verhältnis benutzt: erst mit 10^(dB/10) zurückrechnen.',
  'Decibels were divided: a quotient of powers is a difference of decibels.':
    'Dezibel sind geteilt: Ein Quotient von Leistungen ist eine Differenz von Dezibel.',
  'The gain is over a dipole; dBi counts from an isotropic antenna, 2.15 dB more.':
    'Der Gewinn zählt ab einem Dipol; dBi zählt ab dem Kugelstrahler, 2,15 dB mehr.',
};

const rules: Pairs = {
  'The expanded uncertainty (k = 2) stands where the standard one belongs.':
    'Die erweiterte Unsicherheit (k = 2) steht dort, wo die Standardunsicherheit hingehört.',
  'What was known before the observation was left out: the likelihood ratio alone is no probability.':
    'Was vor der Beobachtung bekannt war, fehlt: Das Likelihood-Verhältnis allein ist keine Wahrscheinlichkeit.',
  'Odds are no probability: a share is the odds over one and the odds.':
    'Chancen sind keine Wahrscheinlichkeit: Der Anteil ist die Chance geteilt durch eins plus die Chance.',
  'The distance between the largest and the smallest reading, or half of it, was taken: how sure a mean is comes from the standard deviation.':
    'Es wurde der Abstand zwischen größtem und kleinstem Messwert genommen, oder seine Hälfte: Wie sicher ein Mittelwert ist, sagt die Standardabweichung.',
  'The factor of the normal distribution was taken: with few readings the spread itself is uncertain, and Student’s t belongs there.':
    'Es wurde der Faktor der Normalverteilung genommen: Bei wenigen Messwerten ist die Streuung selbst unsicher, hier gehört Student-t hin.',
  'Another factor of Student’s t was taken: that of other degrees of freedom, or of one side only.':
    'Es wurde ein anderer Faktor der Student-t-Verteilung genommen: der anderer Freiheitsgrade oder der für nur eine Seite.',
  'The chances of all that were looked at were added: that none of them is bad is a product of as many shares, a power.':
    'Die Wahrscheinlichkeiten aller geprüften Anlagen sind addiert: Dass keine schlecht ist, ist ein Produkt aus ebenso vielen Anteilen, also eine Potenz.',
  'One too many was counted: beside the bad one there is one good one less than were looked at.':
    'Eine zu viel gezählt: Neben der schlechten gibt es eine gute weniger, als geprüft wurden.',
  'Specific attenuation times the whole slant path: heavy rain is small, so that it fills only a part of the path.':
    'Spezifische Dämpfung mal den ganzen schrägen Weg: Starkregen ist kleinräumig und füllt nur einen Teil davon.',
  'Decibels of a ratio of fields are turned back by 10^(dB/20), not by 10^(dB/10).':
    'Dezibel eines Feldverhältnisses rechnet man mit 10^(dB/20) zurück, nicht mit 10^(dB/10).',
  'This is the whole width of the interval; asked for is the half to one side.':
    'Das ist die ganze Breite des Intervalls; verlangt ist die Hälfte zu einer Seite.',
  'The sine stands where the tangent belongs in the short formula, and in the south 180 degrees are not added.':
    'In der kurzen Formel steht der Sinus, wo der Tangens hingehört, und im Süden werden keine 180 Grad addiert.',
  'A step was left out: what it begins with was taken for what it gives.':
    'Ein Schritt fehlt: Womit er beginnt, steht für das, was er ergibt.',
  'A step was left out: {} stands where this belongs: {}.':
    'Ein Schritt fehlt: {} steht an der Stelle von: {}.',
  'The normal distribution was taken: with few readings the spread itself is uncertain, and Student’s t belongs there.':
    'Es wurde die Normalverteilung genommen: Bei wenigen Messwerten ist die Streuung selbst unsicher, hier gehört die Student-t-Verteilung hin.',
  'One too many or too few was counted: degrees of freedom are one less than the readings.':
    'Es ist einer zu viel oder zu wenig gezählt: Freiheitsgrade sind einer weniger als Messwerte.',
  'The sum of squares was divided by the number of readings; the mean was taken from the same readings, so it is one less.':
    'Die Quadratsumme ist durch die Zahl der Messwerte geteilt; das Mittel stammt aus denselben Messwerten, also durch einen weniger.',
  'The backlash was forgotten: turning back begins with turns that move nothing.':
    'Das Spiel ist vergessen: Das Zurückdrehen beginnt mit Umdrehungen, die nichts bewegen.',
  'Half way back is the peak only between equal levels; here the peak lies nearer to the higher one.':
    'Auf halbem Weg zurück liegt das Maximum nur zwischen gleichen Pegeln; hier liegt es näher beim höheren.',
  'The guard band was put on the wrong side of the limit: to accept, the reading must be better than the limit by it.':
    'Das Schutzband liegt auf der falschen Seite der Grenze: Für die Abnahme muss der Messwert um das Schutzband besser sein als die Grenze.',
  'A gain was subtracted; gains are positive and added.':
    'Ein Gewinn ist abgezogen; Gewinne sind positiv und werden addiert.',
  'A loss was added; losses are positive and subtracted.':
    'Ein Verlust ist addiert; Verluste sind positiv und werden abgezogen.',
};

const constants: Pairs = {
  'The height of the orbit above the ground (35 786 km) stands where its radius belongs (42 164 km).':
    'Die Höhe der Umlaufbahn über dem Boden (35 786 km) steht dort, wo ihr Radius hingehört (42 164 km).',
  'This is the height of the orbit above the ground; the range is that only right below the satellite.':
    'Das ist die Höhe der Umlaufbahn über dem Boden; so groß ist die Entfernung nur genau unter dem Satelliten.',
  'Another constant was taken than the one given.':
    'Es wurde eine andere Konstante als die gegebene genommen.',
  'Another constant was taken, {} in place of {}: {}.':
    'Es wurde eine andere Konstante genommen, {} statt {}: {}.',
  'Another value was taken, {}: {}.': 'Es wurde ein anderer Wert genommen, {}: {}.',
  'The coefficients of one polarization were taken for both.':
    'Die Koeffizienten einer Polarisation sind für beide genommen.',
  'The radius stands where the diameter belongs.':
    'Der Radius steht dort, wo der Durchmesser hingehört.',
  'The diameter stands where the radius belongs.':
    'Der Durchmesser steht dort, wo der Radius hingehört.',
};

const functions: Pairs = {
  'The half was not taken.': 'Die Hälfte wurde nicht genommen.',
  'The square was not taken.': 'Es wurde nicht quadriert.',
  'The square root was not taken.': 'Die Wurzel wurde nicht gezogen.',
  'A square root was taken where none belongs.':
    'Es wurde eine Wurzel gezogen, wo keine hingehört.',
  'An exponent was taken as a factor.': 'Ein Exponent wurde als Faktor genommen.',
  'The exponent was left out.': 'Der Exponent fehlt.',
  'Sine and cosine were exchanged.': 'Sinus und Kosinus sind vertauscht.',
  'The sine stands where the tangent belongs: what is known are the two sides at the right angle.':
    'Der Sinus steht dort, wo der Tangens hingehört: Bekannt sind die beiden Seiten am rechten Winkel.',
  'The tangent stands where the sine or the cosine belongs.':
    'Der Tangens steht dort, wo der Sinus oder der Kosinus hingehört.',
  'Twice the angle was put in.': 'Der Winkel ist doppelt eingesetzt.',
  'Half of the right answer, as if counted to one side only.':
    'Die Hälfte der richtigen Antwort, als wäre nur nach einer Seite gezählt.',
  'Half of the right answer: a half was taken where none belongs, or a two was forgotten.':
    'Die Hälfte der richtigen Antwort: Es wurde halbiert, wo es nicht hingehört, oder eine Zwei vergessen.',
  'Twice the right answer: a half was forgotten, or both sides were counted.':
    'Das Doppelte der richtigen Antwort: Ein Halbieren ist vergessen, oder beide Seiten sind gezählt.',
  'The beamwidth counts from edge to edge; half of it was put in, or the whole where the half belongs.':
    'Die Halbwertsbreite zählt von Rand zu Rand; eingesetzt ist die Hälfte davon, oder das Ganze, wo die Hälfte hingehört.',
  'A function was left out: the angle of a quotient is its arctangent, the decibels are a logarithm.':
    'Eine Funktion fehlt: Der Winkel eines Quotienten ist sein Arkustangens, Dezibel sind ein Logarithmus.',
  'This is the slope in percent; the angle is its arctangent.':
    'Das ist die Neigung in Prozent; der Winkel ist ihr Arkustangens.',
};

const items: Pairs = {
  'horizontal reduction and vertical adjustment':
    'waagrechter Minderungsfaktor und senkrechter Anpassungsfaktor',
  'An item was left out.': 'Ein Posten fehlt.',
  'Left out: {}.': 'Es fehlt: {}.',
  'An item was counted twice.': 'Ein Posten ist doppelt gezählt.',
  'Counted twice: {}.': 'Doppelt gezählt: {}.',
  'An item was added instead of subtracted, or the other way round.':
    'Ein Posten ist addiert statt abgezogen, oder umgekehrt.',
  'Subtracted instead of added: {}.': 'Abgezogen statt addiert: {}.',
  'Added instead of subtracted: {}.': 'Addiert statt abgezogen: {}.',
  'With the sign turned: {}.': 'Mit verkehrtem Vorzeichen: {}.',
  'A quotient was turned over, or multiplied where it divides.':
    'Ein Quotient ist umgedreht, oder es ist malgenommen statt geteilt.',
  'Divided by instead of multiplied with: {}.': 'Geteilt statt malgenommen: {}.',
  'Multiplied with instead of divided by: {}.': 'Malgenommen statt geteilt: {}.',
  'Two items were multiplied where they are added.': 'Zwei Posten sind malgenommen statt addiert.',
  'An item that is added plainly was squared and put under the root, or apart from what it belongs to.':
    'Ein Posten, der einfach addiert wird, ist quadriert unter die Wurzel gesetzt, oder getrennt von dem, wozu er gehört.',
  'Independent items were added plainly: what varies on its own adds as the root of the squares.':
    'Unabhängige Posten sind einfach addiert: Was für sich schwankt, addiert sich als Wurzel der Quadrate.',
  'Two givens were put in each other’s place.': 'Zwei gegebene Werte sind vertauscht eingesetzt.',
  'Put in each other’s place: {} and {}.': 'Vertauscht eingesetzt: {} und {}.',
  'Something was added that the question does not ask for.':
    'Es ist etwas addiert, wonach nicht gefragt ist.',
  'Added beyond what was asked for: {}.': 'Addiert, obwohl nicht danach gefragt ist: {}.',
  'term with {}': 'Glied mit {}',
  'factor {}': 'Faktor {}',
  number: 'Zahl',
};

const quantities: Pairs = {
  'This is an earlier step, not yet the answer.':
    'Das ist ein früherer Schritt, noch nicht die Antwort.',
  'This is an earlier step, not yet the answer: {}.':
    'Das ist ein früherer Schritt, noch nicht die Antwort: {}.',
  'This is a given, not the answer.': 'Das ist ein gegebener Wert, nicht die Antwort.',
  'This is a given, not the answer: {}.': 'Das ist ein gegebener Wert, nicht die Antwort: {}.',
  'This is the probability of the opposite: 100 percent less the right one.':
    'Das ist die Wahrscheinlichkeit des Gegenteils: 100 Prozent minus die richtige.',
  'The two shares were exchanged: this is the other part of the whole.':
    'Die beiden Anteile sind vertauscht: Das ist der andere Teil des Ganzen.',
  'This is what is lost on the way, not what is left.':
    'Das ist, was auf dem Weg verloren geht, nicht was übrig bleibt.',
  'The digits are right and the decimal point is not: a factor of ten, a hundred or a thousand.':
    'Die Ziffern stimmen, das Komma nicht: ein Faktor zehn, hundert oder tausend.',
};

export const slips: Pairs = {
  ...direction,
  ...units,
  ...decibels,
  ...rules,
  ...constants,
  ...functions,
  ...items,
  ...quantities,
};

/** German for `how-much-ballast-does-a-flat-roof-need`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'Basic wind speed of the place': 'Grundwindgeschwindigkeit des Orts',
  'From the national map: the 10-minute mean at 10 m height that is met once in 50 years.':
    'Aus der Karte des Landes: das Zehnminutenmittel in 10 m Höhe, das einmal in 50 Jahren erreicht wird.',
  Terrain: 'Gelände',
  '0: sea and coast': '0: See und Küste',
  'I: lakes, flat land without obstacles': 'I: Seen, flaches Land ohne Hindernisse',
  'II: low vegetation, single obstacles': 'II: niedriger Bewuchs, einzelne Hindernisse',
  'III: villages, suburbs, forest': 'III: Dörfer, Vorstädte, Wald',
  'IV: towns with high buildings': 'IV: Städte mit hohen Gebäuden',
  'Height above the ground': 'Höhe über dem Boden',
  'Middle of the reflector above the roof': 'Mitte des Reflektors über dem Dach',
  'Width of the base': 'Breite des Gestells',
  'Friction on the roof': 'Reibung auf dem Dach',
  '0.4 for a rubber mat on a wet roof; gravel and ice have less.':
    '0,4 für eine Gummimatte auf nassem Dach; Kies und Eis haben weniger.',
  'Safety factor': 'Sicherheitsfaktor',
  'Force coefficient': 'Kraftbeiwert',
  '1.2 to 1.4 for a solid dish, practice of the trade; 1.8 for a flat plate.':
    '1,2 bis 1,4 für einen geschlossenen Reflektor, Praxis des Gewerbes; 1,8 für eine ebene Platte.',
  'Outside diameter of the mast': 'Außendurchmesser des Masts',
  'Wall thickness of the mast': 'Wanddicke des Masts',
  'Wind in which it should still receive': 'Wind, bei dem der Empfang noch gehen soll',
  'Mean wind of the year': 'Mittlerer Wind des Jahres',

  // Answers.
  'A load and a moment, no approval: whether the roof bears the weight, how the wind lifts at an edge, and what is fixed to what, a structural engineer says and the local code decides. Do not work on a roof in wind; secure yourself, the dish and each block against falling.':
    'Eine Last und ein Moment, keine Freigabe: ob das Dach das Gewicht trägt, wie der Wind an der Kante hebt und was woran befestigt wird, sagt ein Tragwerksplaner und entscheidet das örtliche Recht. Nicht bei Wind auf dem Dach arbeiten; sich selbst, den Reflektor und jeden Stein gegen Absturz sichern.',
  'The wind asks for {} kg in all, mount included: {}.':
    'Der Wind verlangt im Ganzen {} kg, samt Halterung: {}.',
  'against sliding': 'gegen Rutschen',
  'against overturning': 'gegen Kippen',
  'Mass that the load asks for': 'Masse, die die Last verlangt',
  'Moment at the foot': 'Moment am Fuß',
  'N m': 'N m',
  Pa: 'Pa',
  'Force of the wind': 'Windkraft',
  'Peak pressure': 'Spitzendruck',
  'gusts counted in': 'mit Böen',
  'Against sliding': 'Gegen Rutschen',
  'Against overturning': 'Gegen Kippen',
  'Loss of pointing': 'Ausrichtverlust',
  'out of the main lobe: the figure says only that it is much':
    'außerhalb der Hauptkeule: die Zahl sagt nur, dass es viel ist',
  'at {} m/s, the mast leans by {}°': 'bei {} m/s, der Mast neigt sich um {}°',
  'That wind is exceeded': 'Dieser Wind wird überschritten',
  'of the year, by the mean wind': 'des Jahres, vom mittleren Wind',
  'Not in it: lift at the edge of a roof, wind on the mount itself, gusts that shake, ice, and whether the roof bears the weight. That is for a structural engineer.':
    'Nicht darin: Sog an der Dachkante, Wind auf die Halterung selbst, rüttelnde Böen, Eis, und ob das Dach das Gewicht trägt. Das ist Sache eines Tragwerksplaners.',

  // Picture and table.
  'Mass that holds the mount, against the speed of the gust':
    'Masse, die die Halterung hält, über der Geschwindigkeit der Bö',
  'Gust / m/s': 'Bö / m/s',
  'Mass with mount / kg': 'Masse mit Halterung / kg',
  'peak pressure': 'Spitzendruck',
  'From the wind to the ballast': 'Vom Wind zum Ballast',
  Step: 'Schritt',
  Value: 'Wert',
  Unit: 'Einheit',
  'mean wind at the height': 'mittlerer Wind in der Höhe',
  turbulence: 'Turbulenz',
  'force on the reflector': 'Kraft auf den Reflektor',
  'moment at the foot': 'Moment am Fuß',
  'mass against sliding': 'Masse gegen Rutschen',
  'mass against overturning': 'Masse gegen Kippen',

  // By hand.
  'the force on the reflector at the peak pressure':
    'die Kraft auf den Reflektor beim Spitzendruck',
  'the moment at the foot': 'das Moment am Fuß',
  'the mass against overturning about one edge of the base':
    'die Masse gegen Kippen um eine Kante des Gestells',

  'the mass against sliding': 'die Masse gegen Rutschen',
  'the second moment of area of the mast, in centimetres':
    'das Flächenträgheitsmoment des Masts, in Zentimetern',
  'the slope of its head at {} m/s, steel with 210 GPa':
    'die Neigung seines Kopfs bei {} m/s, Stahl mit 210 GPa',

  // Errors.
  'is it in km/h?': 'ist der Wert in km/h?',
  'is it in cm?': 'ist der Wert in cm?',
  'is it in mm?': 'ist der Wert in mm?',
  'a coefficient below 1 is for a reflector under a radome':
    'ein Beiwert unter 1 gilt für einen Reflektor unter einem Radom',
  'small enough that the mast leans less than 5 degrees: beyond, beam theory does not hold':
    'so klein, dass sich der Mast um weniger als 5 Grad neigt: darüber gilt die Balkentheorie nicht',
};

export default pairs;

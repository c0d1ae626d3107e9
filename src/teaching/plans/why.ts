/** Why each computation goes the way it does, and which way the sign goes: the first hint of an exercise. */

/** Reasons by the name of a plan. */
export const WHY: Readonly<Record<string, string>> = {
  azimuth:
    'The satellite stands over the equator: seen from the north it is to the south, and a slot further east turns the azimuth below 180°, a slot further west above.',
  elevation:
    'The farther the station is from the point below the satellite, the lower the satellite stands; being near, it stands lower than a star in the same direction would.',
  'slant-range':
    'The line of sight is the longest side of a right triangle of its level and its upward part: both are squared, so that no sign matters, and it is always longer than 35 786 km.',
  skew: 'Away from the meridian of the satellite, the vertical of the station and the axis of the Earth point in different directions; seen from the north, a slot to the west turns the feed clockwise as seen from behind (positive), a slot to the east anticlockwise.',
  'spherical-elevation':
    'Only the angle at the centre of the Earth counts: the larger it is, the lower the satellite; the radius of the Earth over that of the orbit takes off what the nearness of the satellite costs.',
  'polar-declination':
    'The satellites are near, so that from the north they are seen below the plane of the equator: the beam leans towards the equator, on both sides of it by the same angle.',
  'obstruction-clearance':
    'What counts is the distance from the top to the edge of the beam, across the beam: subtract half a diameter from the distance to its axis. A result below zero is how much is cut.',
  'magnetic-bearing':
    'An east declination turns the needle to the east of true north, so that the compass shows less: magnetic is true less east declination.',
  'offset-angle':
    'The rim of an offset reflector is an ellipse that looks round along the beam: width over height is the cosine of the angle between both views. The narrower the rim is for its height, the larger the angle; it has no sign.',
  'face-lean':
    'An offset reflector receives from higher than its face looks: subtract the offset angle from the elevation. A result below zero leans forwards.',
  skyline:
    'Height over level distance is the tangent of the elevation; count the height from the eye, not from the ground. A top below the eye gives a negative angle.',
  'geocentric-latitude':
    'The Earth is flattened, so that the angle at its centre is smaller in size than the geodetic latitude everywhere but at the equator and the poles; the sign stays, negative in the south.',
  beamwidth:
    'The beam is the narrower the more wavelengths fit across the reflector: a larger dish or a higher frequency narrows it.',
  'antenna-gain':
    'Gain grows with the area, so with the square of diameter and frequency: 20 log. What the aperture loses by its efficiency is subtracted.',
  'pointing-loss':
    'Near its peak the beam falls with the square of the error: half a beamwidth off costs 3 dB, twice the error costs four times the decibels. To which side does not matter, and the loss is positive.',
  'surface-loss':
    'A bump lengthens the way twice, in and out, so that its phase error is 4 π times its height over the wavelength; the loss grows with the square of that and is positive.',
  'far-field':
    'The far field begins where the way from the rim is longer than that from the middle by a sixteenth of a wavelength: with the square of the diameter.',
  'polarization-mismatch':
    'Only the part of the field along the feed is received, the cosine of the error; a loss is positive, so a minus stands before the logarithm of a number below 1.',
  'rain-height':
    'Snow melts a little above the height of zero degrees: add 0.36 km to the height of the isotherm.',
  'specific-rain-attenuation':
    'Attenuation grows faster than the rain rate, by a power a little above 1; for circular polarization both linear ones are averaged.',
  'rain-attenuation':
    'Specific attenuation times the part of the path that is in rain. Rain falls from the rain height down to the station, so subtract the station’s height; a heavy shower is small, so that the path is shortened; a rarer share of time attenuates more.',
  'total-attenuation':
    'Rain and cloud come together and are added; scintillation comes on its own and adds as squares; gases are always there and are added at the end. All four are losses, so that no sign is minus.',
  'sky-noise':
    'What absorbs also radiates: rain replaces the cold background by its own warmth, in the share that it absorbs. More attenuation makes the sky warmer, up to the temperature of the rain.',
  'free-space-loss':
    'The same power spreads over a sphere that grows with the square of the distance: 20 log for distance and frequency, all three terms added.',
  'noise-temperature':
    'A noise figure says by how much a source at 290 K is made worse; 0 dB adds nothing, so subtract one from the ratio. The result is never negative.',
  'system-noise':
    'A loss before the receiver does two things: it weakens the noise that comes from the antenna and adds noise of its own, being warm. All three parts are then added.',
  'figure-of-merit':
    'Signal over noise: the gain counts for it, the loss and ten log of the noise temperature against it.',
  'clear-sky-margin':
    'Follow the power: EIRP, less the loss, plus the gain; then subtract the noise, the symbol rate and the threshold. Boltzmann’s constant is negative in decibels: subtracting it adds 228.6. What is left is margin.',
  'symbol-energy':
    'A symbol holds the power for the time of one symbol: the more symbols a second, the less energy each has, so subtract ten log of the rate.',
  'bit-energy':
    'The energy of a symbol is shared by its bits: with more bits per symbol each has less, so subtract ten log of them.',
  'combined-ratio':
    'Both noises add, so that less is left than on the worse link alone: turn both ratios into noise over carrier (a minus in the exponent), add them as powers, and turn the sum over again.',
  'signal-over-noise-floor':
    'The reading is signal and noise together; subtract the noise as a power. The signal’s own level is always a little below the reading.',
  'peak-from-two-flanks':
    'With equal levels the peak is half way; the higher level pulls it to its own side: towards the second place if that is the higher one.',
  'peak-from-three-readings':
    'Three points lie on one parabola: the peak moves from the middle towards the higher neighbour, upwards if the third level is higher than the first.',
  'loss-from-three-readings':
    'The parabola through three readings gives its width and how far the middle is from its top; the loss is what the lobe falls over that way. It is squared, so that the side does not matter.',
  'unequal-bracketing':
    'A drop grows with the square of the way, so that ways are as the roots of the drops; the peak lies nearer to the end with the smaller drop.',
  'offset-from-loss':
    'The loss grows with the square of the error, so that the error is a root: four times the decibels is twice the error. The loss does not say to which side.',
  'null-half-way':
    'The null is deep and narrow, but its flanks are alike: between two rotations of equal level it lies half way, with their signs.',
  'null-isolation':
    'The finer the display and the nearer both places, the better the null is known; what is not known of it costs isolation. The tangent of a small angle is below 1, so that a minus makes the decibels positive.',
  'axis-coupling':
    'If the lobe stands slantwise to the axes of the mount, the peak of one axis depends on where the other stands. Each further peaking leaves the square of the coupling, so that its sign does not matter.',
  'loss-after-both-axes':
    'After the first axis is peaked, the error of the second is left, a little smaller by the coupling; after the second, the square of the coupling is left of that.',
  bracketing:
    'Between equal levels the peak is half way, but turning back begins with turns that move nothing: subtract them from the way, halve the rest, and add them again.',
  'cable-loss':
    'The skin effect grows with the root of the frequency, the loss of the dielectric with the frequency itself, so add both; the sum grows with the length.',
  'cable-run':
    'As for any cable, and a warm conductor loses more: by so many percent for each kelvin above 20 °C, and less by as many below.',
  'outlet-level':
    'Every part on the way takes decibels off: subtract them all from the level at the beginning.',
  'outlet-budget': 'Amplifiers add decibels; everything else on the way is subtracted.',
  'level-in-dbm':
    'Power is voltage squared over the impedance: 0 dBµV is 90 dB and ten log of 75 below one milliwatt, so that dBm is always the smaller number.',
  'acceptance-limit':
    'To accept with little risk, the reading must be better than the limit by the guard band: for a least level it is added.',
  'intermediate-frequency':
    'The converter shifts the carrier by the frequency of its oscillator: take the difference of both without its sign, in megahertz.',
  'energy-from-mer':
    'The instrument adds an error of its own; subtract it as a power. The true value is always better than the one shown.',
  'wind-moment':
    'Pressure grows with the square of the wind; force is pressure times area times shape, and its lever is the height.',
  ballast:
    'Friction must hold the wind with a margin: the smoother the roof, the heavier the mount; mass is weight over gravity.',
  'mast-slope':
    'A tube bends the less the thicker it is, by the fourth power of its diameters: outside less inside, and the inside is less by twice the wall.',
  'eirp-density':
    'Turn watts into decibels, subtract the loss, add the gain; spreading the power over the symbol rate leaves less in each 40 kHz, so subtract ten log of the ratio.',
  'off-axis-density':
    'Beside the beam the antenna still has gain, less with the angle: 29 less 25 log of it, added to the density at the flange.',
  'axial-ratio':
    'A wave that is not quite round is one round wave with a weak one of the other hand: the rounder, the smaller the second, the larger the discrimination.',
  'ingress-level':
    'The field falls with the distance; a dipole takes the less from it the higher the frequency; subtract the screening from what the dipole would take.',
  'instrument-offset':
    'What differs from point to point cancels in the differences, taken as first less second; their scatter says how sure the mean is, to both sides, and three differences need a wide factor.',
  'sample-of-a-lot':
    'The lot passes if none of the sample is bad, or just one: both chances add. A sample that is small lets many bad lots pass.',
  'mean-of-three-readings':
    'A mean of three is surer than one reading by the root of three: divide by it. What the instrument itself is unsure of stays, and both add as squares, so that the result is larger than either.',
  'guard-band':
    'To accept with little risk, the reading must be better than the limit by the guard band: for a least level it is added.',
  'conformity-probability':
    'How many standard uncertainties is the reading above the limit? The normal distribution gives the share below that; above the limit it is over a half.',
  'conformity-of-few-readings':
    'How many standard uncertainties is the reading above the limit? With few readings the uncertainty itself is unsure, so that Student’s t takes the place of the normal distribution: above the limit the share is over a half, but nearer to it.',
  'two-suspects':
    'Odds before, times how much better the first explains what was seen, are the odds after: a ratio above one speaks for the first. A probability is the odds over one and the odds.',
  'lean-or-mispointed':
    'How well does each cause explain the reading? The likelihood of leaning over that of mispointing, times the odds before, gives the odds after: above one speaks for the mast.',
};

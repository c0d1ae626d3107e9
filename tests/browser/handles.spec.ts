/** Marks of the pictures that are moved by the pointer and by keys write the fields of the form. */

import { expect, field, openExample, test } from './fixtures.js';

test('a slot is moved along the arc', async ({ page }) => {
  const example = await openExample(page, 'where-is-the-satellite');
  const slot = field(example, 'Orbital longitude');
  const mark = example.getByRole('slider', { name: 'Slot along the arc' });
  await mark.focus();
  // To the left is east in the northern sky.
  await page.keyboard.press('ArrowLeft');
  await expect(slot).toHaveValue('16.5');
  await expect(mark).toBeFocused();
  await expect(mark).toHaveAttribute('aria-valuetext', /16\.5° E/);
  await page.keyboard.press('PageDown');
  await expect(slot).toHaveValue('17.5');
  await mark.scrollIntoViewIfNeeded();
  const box = await mark.boundingBox();
  if (!box) throw new Error('the mark is not to be seen');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 60, y + 10, { steps: 4 });
  await expect.poll(async () => Number(await slot.inputValue())).toBeLessThan(5);
  await page.mouse.up();
});

test('corners of the skyline and the stops of a bracketing are moved', async ({ page }) => {
  const view = await openExample(page, 'is-the-view-clear');
  const corner = view.getByRole('slider', { name: 'Sighting 4' });
  await corner.focus();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowRight');
  await expect(corner).toHaveAttribute('aria-valuetext', 'bearing 169°, 16° up');
  await expect(view.locator('[data-cell="sightings[3].elevationDeg"]')).toHaveValue('16');
  await expect(view.locator('[data-cell="sightings[3].bearingDeg"]')).toHaveValue('169');
  const half = await openExample(page, 'half-way-back');
  await half.getByRole('slider', { name: 'Stop on the far side' }).focus();
  await page.keyboard.press('ArrowLeft');
  await expect(field(half, 'Turns back')).toHaveValue('5.25');
  await expect(half.locator('.ex-says')).toContainText('Turn back 2.63 turns');
});

test('German marks speak German', async ({ page }) => {
  await page.goto('/de/examples/half-way-back/');
  await expect(page.getByTestId('half-way-back')).toHaveAttribute('data-ready');
  await expect(page.getByRole('slider', { name: 'Halt auf dem Weg hinaus' })).toHaveAttribute(
    'aria-valuetext',
    '3,00 Umdrehungen hinaus',
  );
});

test('the head of an adjuster goes round as often as the finger', async ({ page }) => {
  const example = await openExample(page, 'find-the-peak');
  const place = field(example, 'The adjuster stands at');
  const head = example.getByRole('slider', { name: 'The adjuster stands at' });
  await head.focus();
  await page.keyboard.press('ArrowUp');
  await expect(place).toHaveValue('3.25');
  await expect(head).toHaveAttribute('aria-valuetext', '3.25 turns');
  await expect(head).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(place).toHaveValue('3');
  await expect(head).toHaveAttribute('aria-valuetext', '3.00 turns');
  await head.scrollIntoViewIfNeeded();
  const box = await head.boundingBox();
  const picture = await head.locator('..').boundingBox();
  if (!box || !picture) throw new Error('the head is not to be seen');
  // At a whole turn the hand points up; once round and a quarter more.
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const radius = (0.86 * 62 * picture.width) / 440;
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let eighth = 1; eighth <= 10; eighth += 1) {
    const angle = (eighth * Math.PI) / 4;
    await page.mouse.move(x + radius * Math.sin(angle), y + radius * (1 - Math.cos(angle)));
    await expect
      .poll(async () => Number(await place.inputValue()))
      .toBeGreaterThan(2.95 + eighth / 8);
  }
  await page.mouse.up();
  await expect.poll(async () => Number(await place.inputValue())).toBeCloseTo(4.25, 1);
});

test('a sender is moved along its distance, a guard band off its limit', async ({ page }) => {
  const mast = await openExample(page, 'does-a-mobile-mast-disturb');
  const sender = mast.getByRole('slider', { name: 'Distance of the sender' });
  await sender.focus();
  await page.keyboard.press('ArrowRight');
  await expect(field(mast, 'Distance of the sender')).toHaveValue('130');
  await expect(sender).toHaveAttribute('aria-valuetext', '130 m');
  await sender.scrollIntoViewIfNeeded();
  const box = await sender.boundingBox();
  if (!box) throw new Error('the sender is not to be seen');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 60, y, { steps: 4 });
  await expect
    .poll(async () => Number(await field(mast, 'Distance of the sender').inputValue()))
    .toBeLessThan(80);
  await page.mouse.up();
  const accept = await openExample(page, 'accept-or-not');
  const guard = accept.getByRole('slider', { name: 'Guard band' });
  await guard.focus();
  await page.keyboard.press('ArrowRight');
  await expect(accept.getByLabel('Rule of decision')).toHaveValue('guard-band');
  await expect(guard).toBeFocused();
  const before = Number(await guard.getAttribute('aria-valuenow'));
  await page.keyboard.press('ArrowRight');
  await expect
    .poll(async () => Number(await guard.getAttribute('aria-valuenow')))
    .toBeGreaterThan(before);
});

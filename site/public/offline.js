// Keeps the pages for reading without a network, and says when a newer version of them is there.
// Not where the reader has said no, and not unasked where data is to be saved.
const chosen = localStorage.getItem('slantpath-keep');
if ('serviceWorker' in navigator && chosen !== 'no' && (chosen || !navigator.connection?.saveData)) {
  addEventListener('load', async () => {
    const words = JSON.parse(document.querySelector('offline-state')?.dataset.words ?? '{}');
    const registration = await navigator.serviceWorker.register('/sw.js').catch(() => undefined);
    if (!registration) return;
    const offer = (worker) => {
      if (document.querySelector('.page-update')) return;
      const bar = document.createElement('div');
      bar.className = 'page-update';
      bar.setAttribute('role', 'status');
      bar.textContent = `${words.newer ?? 'A newer version of these pages is here.'} `;
      const button = document.createElement('button');
      button.textContent = words.showIt ?? 'Show it';
      button.addEventListener('click', () => worker.postMessage('take over'));
      bar.append(button);
      document.body.append(bar);
    };
    let had = navigator.serviceWorker.controller !== null;
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      if (had) location.reload();
      had = true;
    });
    if (registration.waiting && had) offer(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const worker = registration.installing;
      worker?.addEventListener('statechange', () => {
        if (worker.state === 'installed' && navigator.serviceWorker.controller) offer(worker);
      });
    });
  });
}

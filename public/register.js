// Registers the service worker and tells the app what it needs to know of it:
//   <html data-offline>: "unsupported", "failed", "preparing" or "ready"
//   event "benchbook-offline": that attribute changed
//   event "benchbook-update": a new version waits; also kept in window.benchbookUpdate
//   window.benchbookTakeOver(): start the new version and reload this page
//   event "benchbook-install": the browser offers to install the app; the offer is kept in window.benchbookInstall
window.addEventListener('beforeinstallprompt', (offer) => {
  // May come before the app has started: kept until the scorer asks for it.
  offer.preventDefault();
  window.benchbookInstall = offer;
  window.dispatchEvent(new CustomEvent('benchbook-install'));
});

(() => {
  const workers = navigator.serviceWorker;
  const offline = (state) => {
    document.documentElement.dataset.offline = state;
    window.dispatchEvent(new CustomEvent('benchbook-offline', { detail: state }));
  };
  if (!workers) {
    offline('unsupported');
    return;
  }

  const offer = (registration) => {
    window.benchbookUpdate = registration;
    window.dispatchEvent(new CustomEvent('benchbook-update', { detail: registration }));
  };

  const watch = (registration, worker) => {
    worker.addEventListener('statechange', () => {
      if (worker.state === 'installed' && registration.active) offer(registration);
      if (worker.state === 'activated') offline('ready');
      if (worker.state === 'redundant' && !registration.active) offline('failed');
    });
  };

  let asked = false;
  window.benchbookTakeOver = () => {
    asked = true;
    window.benchbookUpdate?.waiting?.postMessage({ type: 'take-over' });
  };
  // Only the page that asked reloads: another tab may be in the middle of a play.
  workers.addEventListener('controllerchange', () => {
    if (asked) window.location.reload();
  });

  const HOUR = 60 * 60 * 1000;
  const lookForUpdates = (registration) => {
    let last = Date.now();
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState !== 'visible' || Date.now() - last < HOUR) return;
      last = Date.now();
      registration.update().catch(() => {});
    });
  };

  offline('preparing');
  workers
    .register('./sw.js', { updateViaCache: 'none' })
    .then((registration) => {
      if (registration.active) offline('ready');
      if (registration.waiting) offer(registration);
      if (registration.installing) watch(registration, registration.installing);
      registration.addEventListener('updatefound', () => watch(registration, registration.installing));
      lookForUpdates(registration);
    })
    .catch(() => offline('failed'));
})();

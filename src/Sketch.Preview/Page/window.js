// Identifies this window. A reloaded window is the same, a copied one is another: a lock held as long as the page lives distinguishes them.

const alphabet = 'abcdefghijklmnopqrstuvwxyz0123456789';
const random = () => [...crypto.getRandomValues(new Uint8Array(16))].map((n) => alphabet[n % alphabet.length]).join('');

const hold = (name) => new Promise((settled) => {
  navigator.locks.request(`sketch-${name}`, { ifAvailable: true }, (lock) => {
    settled(lock !== null);
    return lock && new Promise(() => {});
  });
});

export async function windowName() {
  const known = sessionStorage.getItem('window');
  if (known && await hold(known)) return known;
  const name = random();
  await hold(name);
  sessionStorage.setItem('window', name);
  return name;
}

// The light the screen is made for: paper in daylight, bay under the lift. Kept on this machine.
export type Theme = 'paper' | 'bay';

const storageKey = 'theme';

export function storedTheme(): Theme {
  return localStorage.getItem(storageKey) === 'bay' ? 'bay' : 'paper';
}

export function applyTheme(theme: Theme): void {
  document.documentElement.dataset.theme = theme;
}

export function keepTheme(theme: Theme): void {
  localStorage.setItem(storageKey, theme);
  applyTheme(theme);
}

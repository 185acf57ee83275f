// Starts the renderer: theme first, then the frame with its places.
import './zod-without-eval.ts';
import './frame/fonts.css';
import './frame/tokens.css';
import './frame/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './frame/App.tsx';
import { applyTheme, storedTheme } from './frame/theme.ts';

applyTheme(storedTheme());

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no element with the id "root".');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);

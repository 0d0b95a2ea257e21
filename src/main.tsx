/** Opens the door: the pages, with the house behind them. */
import { render } from 'preact';
import { house } from './house/house.js';
import { App } from './pages/app.js';
import './pages/look/index.css';

render(<App house={house} />, document.getElementById('app') as HTMLElement);

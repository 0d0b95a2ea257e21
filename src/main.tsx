// Placeholder: holds the place of the app until its pages are here.
import { render } from 'preact';

render(<h1>Evenhand</h1>, document.getElementById('app')!);

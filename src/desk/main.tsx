/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { render } from 'preact';
import { App } from './app.tsx';

const place = document.getElementById('desk');
if (place !== null) render(<App />, place);

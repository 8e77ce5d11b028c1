import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/print.css';

import { mount } from 'svelte';

import App from './App.svelte';
import { router } from './lib/route/router.svelte';
import { settings } from './lib/state/settings.svelte';

settings.followSystem();
await settings.speak();
router.start(settings.welcomed ? { screen: 'list' } : { screen: 'first', step: 1 });
mount(App, { target: document.body });

import { mount } from 'svelte';
import './look/base.css';
import App from './App.svelte';
import { language } from './words/language';

document.documentElement.lang = language;

mount(App, { target: document.getElementById('app')! });

import { mount } from 'svelte';
import './look/base.css';
import App from './App.svelte';

mount(App, { target: document.getElementById('app')! });

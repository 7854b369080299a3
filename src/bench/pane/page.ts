import { movableDivider } from './divider.ts';

const border = document.getElementById('border');
const whole = document.getElementById('bench');
if (border && whole) movableDivider(border, whole, sessionStorage);

// The report as one file that needs nothing: its data stand in the page, and it is drawn at once.
import { flushSync, mount } from 'svelte';
import '../look/base.css';
import ReportDocument from './ReportDocument.svelte';
import type { ReportData } from './document';

const data = JSON.parse(document.getElementById('report-data')!.textContent ?? 'null') as ReportData | null;
if (data) {
  document.documentElement.lang = data.report.language;
  document.title = data.report.title.text;
  mount(ReportDocument, { target: document.getElementById('report')!, props: { data } });
  flushSync();
}

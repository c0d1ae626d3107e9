/** Every case of the published checks of one part, to be tested against by others. */
import { casesCsv, checksByPart } from '../../lib/validation.js';

export const getStaticPaths = () =>
  checksByPart().map(([part, checks]) => ({ params: { part }, props: { checks } }));

export const GET = ({ props }: { props: { checks: ReturnType<typeof checksByPart>[number][1] } }) =>
  new Response(casesCsv(props.checks), { headers: { 'content-type': 'text/csv; charset=utf-8' } });

import { Start } from '../start/start';

export default function StartPage() {
  return <Start />;
}

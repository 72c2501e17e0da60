import { NotFound } from '../shell/not-found';

export default function NotFoundPage() {
  return <NotFound />;
}

import { NewInquiry } from '../../../inquiry/new-inquiry';

export default function NewInquiryPage() {
  return <NewInquiry />;
}

'use client';

import { useQuery } from '@tanstack/react-query';
import { api } from '../api/client';
import { useInquiry } from '../api/use-inquiry';
import { useMe } from '../api/use-me';
import { useEngine } from '../engine/use-engine';
import { Loading } from '../shell/loading';
import { Workspace } from './workspace';

/** Reads a system, its inquiry and the range, then hands them to the workspace. */
export function SystemPage({ id }: { readonly id: string }) {
  const me = useMe();
  const system = useQuery({
    queryKey: ['system', id],
    queryFn: () => api.systems.get.query({ id }),
    // The workspace has its own copy from here on; a newer one would throw away what is being chosen.
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: 0,
  });
  const inquiry = useInquiry(system.data?.inquiryId, id);
  const engine = useEngine(system.data?.document);
  const failed = [system, inquiry.query, engine].find(({ isError }) => isError);
  if (
    system.data === undefined ||
    engine.data === undefined ||
    inquiry.inquiry === undefined ||
    me === undefined
  )
    return <Loading sheet="System" what="the system and the range" query={failed ?? system} />;
  return (
    <Workspace
      key={id}
      me={me}
      system={system.data}
      inquiry={inquiry.inquiry}
      job={inquiry.job}
      links={inquiry.links}
      engine={engine.data}
    />
  );
}

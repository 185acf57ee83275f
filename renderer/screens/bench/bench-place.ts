// Which unit the bench is at and which check of each unit was last in hand, kept on this machine.
import { useNavigate } from '@tanstack/react-router';
import { useEffect } from 'react';
import type { JobLine } from '../../../app/jobs/jobs.contract.ts';
import { useOpenShop } from '../../frame/open-shop.ts';
import { type Read, useRead } from '../../rpc/use-read.ts';

/** The units that are not closed, oldest ticket first. */
export function useOpenUnits(): Read<JobLine[]> {
  return useRead('jobs.listJobs', { text: '', includeClosed: false });
}

export function byNumber(jobs: readonly JobLine[]): JobLine[] {
  return jobs.toSorted((one, other) => one.number - other.number);
}

const unitKey = (file: string) => `unit at the bench: ${file}`;
const checkKey = (file: string, jobId: number) => `check at the bench: ${file}, job ${jobId}`;

/** The unit the bench was last at, if any. */
export function useLastUnit(): number | null {
  const { file } = useOpenShop();
  return Number(localStorage.getItem(unitKey(file))) || null;
}

/** Remembers that this check is in hand; null when only the unit is. */
export function useRememberPlace(jobId: number | null, checkId: number | null): void {
  const { file } = useOpenShop();
  useEffect(() => {
    if (jobId === null) return;
    localStorage.setItem(unitKey(file), String(jobId));
    if (checkId === null) localStorage.removeItem(checkKey(file, jobId));
    else localStorage.setItem(checkKey(file, jobId), String(checkId));
  }, [file, jobId, checkId]);
}

/** Turns to another unit: to the check that was in hand there, else to its list. */
export function useTurnToUnit(): (jobId: number) => void {
  const { file } = useOpenShop();
  const navigate = useNavigate();
  return (jobId) => {
    const checkId = localStorage.getItem(checkKey(file, jobId));
    if (checkId === null) void navigate({ to: '/bench', search: { unit: jobId } });
    else void navigate({ to: '/bench/$jobId/$checkId', params: { jobId: String(jobId), checkId } });
  };
}

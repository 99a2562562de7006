import { useEffect, useMemo, useState } from 'preact/hooks';
import { ChartKeeper, type ChartPlace, type ChartShown, NO_CHART } from '../chart/chart-keeper.ts';

/** A chart as the page shows it, and who keeps it. */
export interface Chart extends ChartShown {
  readonly keeper: ChartKeeper;
}

/** Opens a sheet for charting, where it was left; leaving the view writes what still waits. */
export function useChart(place: ChartPlace): Chart {
  const [shown, setShown] = useState<ChartShown>(NO_CHART);
  const keeper = useMemo(() => new ChartKeeper(place, setShown), [place.path]);
  useEffect(() => {
    const flush = () => keeper.flush();
    void keeper.open();
    window.addEventListener('pagehide', flush);
    return () => {
      window.removeEventListener('pagehide', flush);
      flush();
    };
  }, [keeper]);
  return { ...shown, keeper };
}

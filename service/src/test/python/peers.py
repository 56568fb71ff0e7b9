"""What the same work costs in Python with NumPy and SciPy (Debian: python3-numpy, python3-scipy).

Started by dev.fillplane.bench.Peers, which leaves the data in a folder and asks for one case after
the other on standard input: "name times". Each answer is one line: the checksum, then for each time
the CPU of the process and the time on the clock, in milliseconds.
"""

import os
import sys
import time

os.environ["OPENBLAS_NUM_THREADS"] = "1"
os.environ["OMP_NUM_THREADS"] = "1"

import heapq  # noqa: E402

import numpy as np  # noqa: E402
from numpy.lib.stride_tricks import sliding_window_view  # noqa: E402
from scipy.interpolate import LinearNDInterpolator  # noqa: E402
from scipy.linalg import cholesky, solve_triangular  # noqa: E402
from scipy.spatial.distance import cdist  # noqa: E402

# Cells solved together: of 250, 500, 1000, 2000 and 10000 the fastest here.
TOGETHER = 250


class Kriging:
    """Universal kriging with a plane as drift: mean and deviation of the floor, no nugget."""

    def __init__(self, variance, sill, reach, spots, cells):
        self.variance, self.sill, self.reach = variance, sill, reach
        spots = spots.reshape(3, -1)
        self.at, self.height, self.cells = spots[:2].T.copy(), spots[2], cells.reshape(2, -1).T.copy()

    def covariance(self, a, b):
        scaled = cdist(a, b)
        scaled *= np.sqrt(3) / self.reach
        decay = np.exp(-scaled)
        scaled += 1
        scaled *= decay
        scaled *= self.sill
        return scaled

    def run(self):
        middle = self.at.mean(axis=0)
        at, datum = self.at - middle, self.height.mean()
        matrix = self.covariance(at, at)
        matrix[np.diag_indices_from(matrix)] += self.variance
        factor = cholesky(matrix, lower=True, check_finite=False, overwrite_a=True)
        drift = np.column_stack([np.ones(len(at)), at])
        white = solve_triangular(factor, np.column_stack([drift, self.height - datum]),
                                 lower=True, check_finite=False)
        white_drift, white_height = white[:, :-1], white[:, -1]
        small = cholesky(white_drift.T @ white_drift, lower=True)
        plane = np.linalg.solve(white_drift.T @ white_drift, white_drift.T @ white_height)
        rest = white_height - white_drift @ plane
        means, deviations = np.empty(len(self.cells)), np.empty(len(self.cells))
        for first in range(0, len(self.cells), TOGETHER):
            some = slice(first, first + TOGETHER)
            cells = self.cells[some] - middle
            known = solve_triangular(factor, self.covariance(at, cells), lower=True,
                                     check_finite=False, overwrite_b=True)
            terms = np.vstack([np.ones(len(cells)), cells.T])
            unsure = solve_triangular(small, terms - white_drift.T @ known, lower=True,
                                      check_finite=False)
            means[some] = datum + plane @ terms + rest @ known
            deviations[some] = np.sqrt(np.maximum(0, self.sill - np.einsum("ij,ij->j", known, known)
                                                  + np.einsum("ij,ij->j", unsure, unsure)))
        return means.mean() + deviations.mean()


class Dense:
    """Linear interpolation on the Delaunay triangulation at corners and middles of the same cells."""

    def __init__(self, readings, nodes, corners):
        self.corners = int(corners)
        readings, nodes = readings.reshape(3, -1), nodes.reshape(2, -1)
        self.at, self.height, self.nodes = readings[:2].T.copy(), readings[2], nodes.T.copy()

    def run(self):
        heights = LinearNDInterpolator(self.at, self.height)(self.nodes)
        return np.nanmean(heights[self.corners:])


class Straightedge:
    """The largest gap under a straightedge in 16 directions, all windows of a direction at once."""

    CLEARANCE = 1e-3
    SHORTEST = 0.5

    def __init__(self, width, length, edge, step):
        self.corners = np.array([[0, 0], [width, 0], [width, length], [0, length]])
        self.edge, self.steps = edge, round(edge / step)
        self.step = step

    @staticmethod
    def elevation(x, y):
        return 0.004 * np.sin(1.3 * x) * np.cos(1.9 * y) + 0.001 * x

    @staticmethod
    def centred(first, last, step):
        count = int(np.floor((last - first) / step + 1e-6)) + 1
        return (first + last) / 2 - step * (count - 1) / 2 + step * np.arange(count)

    def crossings(self, u, v, at):
        """Where a line of constant v enters and leaves the room."""
        found = []
        for i in range(4):
            a, b = i, (i + 1) % 4
            if (v[a] <= at) != (v[b] <= at):
                found.append(u[a] + (at - v[a]) / (v[b] - v[a]) * (u[b] - u[a]))
        return min(found), max(found)

    def profiles(self, turn):
        """Heights along every line of a direction, by the steps that an edge on it has."""
        cosine, sine = np.cos(turn), np.sin(turn)
        u = cosine * self.corners[:, 0] + sine * self.corners[:, 1]
        v = cosine * self.corners[:, 1] - sine * self.corners[:, 0]
        for line in self.centred(v.min() + self.CLEARANCE, v.max() - self.CLEARANCE, self.step):
            left = self.crossings(u, v, line - self.CLEARANCE)
            right = self.crossings(u, v, line + self.CLEARANCE)
            first = max(left[0], right[0]) + self.CLEARANCE
            last = min(left[1], right[1]) - self.CLEARANCE
            if last - first < self.SHORTEST - 2 * self.CLEARANCE:
                continue
            step = self.edge / self.steps
            if last - first < self.edge:
                step = (last - first) / max(2, round((last - first) / step))
            at = self.centred(first, last, step)
            heights = self.elevation(cosine * at - sine * line, sine * at + cosine * line)
            yield heights, min(self.steps, len(heights) - 1)

    @staticmethod
    def largest(windows):
        """Wraps the upper hull of all windows at once, from left to right."""
        count, size = windows.shape
        rows, places = np.arange(count), np.arange(size)
        corner = np.zeros(count, dtype=int)
        largest = 0.0
        while len(rows):
            height = windows[rows, corner]
            away = places - corner[:, None]
            with np.errstate(divide="ignore", invalid="ignore"):
                slopes = np.where(away > 0, (windows[rows] - height[:, None]) / away, -np.inf)
            following = size - 1 - np.argmax(slopes[:, ::-1], axis=1)
            slope = slopes[np.arange(len(rows)), following]
            gaps = height[:, None] + slope[:, None] * away - windows[rows]
            between = (away > 0) & (places < following[:, None])
            largest = max(largest, float(np.max(np.where(between, gaps, 0))))
            going = following < size - 1
            rows, corner = rows[going], following[going]
        return largest

    def run(self):
        largest = 0.0
        for direction in range(16):
            by_steps = {}
            for heights, steps in self.profiles(np.pi * direction / 16):
                by_steps.setdefault(steps, []).append(sliding_window_view(heights, steps + 1))
            for windows in by_steps.values():
                largest = max(largest, self.largest(np.concatenate(windows)))
        return largest


class Crew:
    """The crew as a run of events; the end of the work."""

    CARRY, RAKE, ROLL, MIX, MEASURE, CLEAN = range(6)

    def __init__(self, batches, people, mixers, barrels, mixing, to_floor, back, water, rake, roll, wash):
        self.told = int(batches), int(people), int(mixers), int(barrels)
        self.lasts = [to_floor, rake, roll, mixing, water, wash]
        self.back, self.apart = back, mixing / mixers

    def run(self):
        batches, people, free_mixers, empty = self.told
        lasts, back, apart = self.lasts, self.back, self.apart
        carry, rake, roll, mix, measure, clean = range(6)
        to_wash = unwashed = free_mixers + empty
        full = measured = begun = mixed = carried = placed = raking = raked = rolling = rolled = 0
        tap, last_mix, now = True, -apart, 0.0
        role, free = [-1] * people, list(range(people))
        events = []  # when, who, whether on the way back
        while rolled < batches or unwashed:
            while free:
                if carried < mixed:
                    work, carried = carry, carried + 1
                elif raking < placed:
                    work, raking = rake, raking + 1
                elif rolling < raked:
                    work, rolling = roll, rolling + 1
                elif begun < batches and free_mixers and full and now >= last_mix + apart:
                    work, begun, last_mix = mix, begun + 1, now
                    free_mixers, full = free_mixers - 1, full - 1
                elif measured < batches and tap and empty:
                    work, measured, tap, empty = measure, measured + 1, False, empty - 1
                elif placed == batches and to_wash:
                    work, to_wash = clean, to_wash - 1
                else:
                    break
                same = [person for person in free if role[person] == work]
                hands = same or [person for person in free if role[person] != mix] or free
                person = hands[0]
                free.remove(person)
                role[person] = work
                heapq.heappush(events, (now + lasts[work], person, False))
            following = events[0][0] if events else float("inf")
            if begun < batches and now < last_mix + apart:
                following = min(following, last_mix + apart)
            now = following
            while events and events[0][0] <= now:
                _, person, returning = heapq.heappop(events)
                work = role[person]
                if work == carry and not returning:
                    placed += 1
                    heapq.heappush(events, (now + back, person, True))
                    continue
                if work == carry:
                    empty += 1
                elif work == rake:
                    raked += 1
                elif work == roll:
                    rolled += 1
                elif work == mix:
                    free_mixers, mixed = free_mixers + 1, mixed + 1
                elif work == measure:
                    tap, full = True, full + 1
                else:
                    unwashed -= 1
                free.append(person)
                free.sort()
        return now


KINDS = {"kriging": Kriging, "dense": Dense, "straightedge": Straightedge, "crew": Crew}


def case(folder, name):
    """The case of a name; its data is one array after the other."""
    data, parts = np.fromfile(os.path.join(folder, name)), []
    while len(data):
        count = int(data[0])
        parts.append(data[1] if count == 1 else data[1:1 + count])
        data = data[1 + count:]
    return KINDS[name.split("-")[0]](*parts)


def main():
    cases = {}
    for line in sys.stdin:
        name, times = line.split()
        if name not in cases:
            cases[name] = case(sys.argv[1], name)
        told, answer = [], None
        for _ in range(int(times)):
            cpu, clock = time.process_time(), time.perf_counter()
            answer = cases[name].run()
            told += [1e3 * (time.process_time() - cpu), 1e3 * (time.perf_counter() - clock)]
        print(" ".join(repr(float(number)) for number in [answer] + told), flush=True)


if __name__ == "__main__":
    main()

"""The tables at the end of a run, and the gates that hold over all models."""
import collections
from pathlib import Path

COURSED = 0.99          # of the coursable walls of all real models
COURSED_IN_ONE = 0.95   # of those of each model that has FEW or more
FEW = 5
AGREE = 0.99            # of the coursed walls that a reader can judge
LISTED = [tuple(row.split("\t")) for row in (Path(__file__).parent / "mesh_differences.tsv").read_text("utf-8").splitlines()[1:]]


def print_walls(results):
    """The table of walls: how many are straight, coursable, coursed, and why the others are skipped."""
    print("\nwalls by readers' meshes (coursable: see coursable.py), worst difference of those that agree:")
    print(f"{'model':46} {'walls':>5} {'straight':>8} {'coursable':>9} {'coursed':>7} {'compared':>8} {'agree':>5} "
          f"{'litres':>6} {'box mm':>6} {'opening mm':>10}  skipped, by reason")
    of_models = [r for r in results if r.judged]
    for r in of_models:
        g, c = r.judged, r.judged.compared
        print(f"{r.model:46} {r.walls:5} {g.straight:8} {g.coursable:9} {r.coursed:7} {c.compared:8} {c.within:5} "
              f"{1000 * c.worst_volume:6.2f} {c.worst_box:6.2f} {g.worst_opening:10.2f}  {told(r.reasons)}")
    for kind in ("fixture", "real"):
        of_kind = [r for r in of_models if r.kind == kind]
        total = sum(r.judged.coursable for r in of_kind)
        print(f"{kind}: {sum(r.walls for r in of_kind)} walls, {sum(r.judged.straight for r in of_kind)} straight, {total} coursable, "
              f"{sum(r.judged.coursed for r in of_kind)} of them coursed; {sum(r.judged.compared.compared for r in of_kind)} bodies compared "
              f"({sum(r.judged.compared.by_second for r in of_kind)} with the second reader), {sum(r.judged.compared.within for r in of_kind)} agree")
    print_lines("coursable walls that are skipped", of_models, lambda g: g.misses)
    print_lines("walls of which no reader can tell whether they are coursable", of_models, lambda g: g.unknown)
    print_lines("coursed walls of which no reader has a closed mesh no larger than its box, by our own figures", of_models, lambda g: g.unjudged)
    print_lines("coursed walls whose elevation differs from the faces of their mesh by more than moved ends explain (see elevations.py)", of_models,
                lambda g: g.elevations)
    skipped = collections.Counter()
    for r in of_models:
        skipped.update(r.judged.not_coursable)
    print("\nskipped and not coursable, our reason and what the meshes say: " + told(skipped))


def print_openings(results):
    outcomes = collections.Counter()
    for r in results:
        outcomes.update(r.judged.openings if r.judged else {})
    print("\nboxes of opening elements in the masonry layer, ours against the mesh (2 mm): " + told(outcomes))


def print_junctions(results):
    judged = [r.judged for r in results if r.judged]
    total = {key: sum(g.junctions.get(key, 0) for g in judged) for key in ("junctions", "curved", "levels", "points")}
    print(f"\n{total['junctions']} junctions sampled at {total['levels']} heights and {total['points']} points; "
          f"{total['curved']} of them meet a curved wall and are not sampled")
    print_lines("holes at junctions that an outline-not-filled finding names", [r for r in results if r.judged], lambda g: g.named_holes)


def print_lines(title, results, lines_of):
    lines = [f"{r.model}: {line}" for r in results for line in lines_of(r.judged)]
    print(f"\n{len(lines)} {title}" + (":" if lines else ""))
    for line in lines:
        print(f"  {line}")


def told(counts):
    return ", ".join(f"{name} {n}" for name, n in sorted(counts.items(), key=lambda pair: (-pair[1], pair[0])))


def gates(results):
    """Yields what does not hold over all real models, and every difference that mesh_differences.tsv does not list."""
    real = [r for r in results if r.kind == "real" and r.judged]
    for r in real:
        g = r.judged
        if g.coursable >= FEW and g.coursed < COURSED_IN_ONE * g.coursable:
            yield f"{r.model}: only {g.coursed} of {g.coursable} coursable walls are coursed"
    coursable, coursed = sum(r.judged.coursable for r in real), sum(r.judged.coursed for r in real)
    if coursed < COURSED * coursable:
        yield f"only {coursed} of {coursable} coursable walls of all real models are coursed"
    compared, within = (sum(getattr(r.judged.compared, key) for r in real) for key in ("compared", "within"))
    if within < AGREE * compared:
        yield f"only {within} of {compared} bodies of all real models agree with a reader's mesh"
    for r in results:
        yield from (f"{r.model}: {line}" for quantity in ("volume", "box", "prism", "opening") for line in unlisted(r, quantity))


def unlisted(result, quantity):
    """Differences of one model that are not listed with their cause."""
    known = {(model, wall, of) for model, wall, of, _, _ in LISTED}
    return [f"{wall}: {of} differs: {text}" for wall, of, text in (result.judged.differences if result.judged else [])
            if of == quantity and (result.model, wall, of) not in known]


def print_listed(results):
    """The differences with their causes; and rows of the list that say nothing any more."""
    found = {(r.model, wall, quantity): text for r in results if r.judged for wall, quantity, text in r.judged.differences}
    models = {r.model for r in results}
    print("\ndifferences listed with their cause in mesh_differences.tsv:")
    for model, wall, quantity, whose, cause in LISTED:
        if model in models:
            print(f"  {model}: {wall}: {quantity}, {whose}: {cause} [{found.get((model, wall, quantity), 'no difference any more: delete the row')}]")


def print_declared(results):
    print("\ndeclared wall volumes (Qto_WallBaseQuantities, BaseQuantities) against the bodies as read:")
    for r in results:
        outcomes = collections.Counter(outcome for outcome, _ in r.declared)
        if set(outcomes) - {"none declared"}:
            print(f"  {r.model}: " + "; ".join(f"{outcome}: {n}" for outcome, n in sorted(outcomes.items())))
    totals = collections.Counter(outcome for r in results for outcome, _ in r.declared)
    print("  in all: " + "; ".join(f"{outcome}: {n}" for outcome, n in sorted(totals.items())))


def print_limits(results):
    limits = [f"{r.model}: {line}" for r in results for line in r.limits]
    print(f"\n{len(limits)} lines of verify_layout.py that are not counted as breaches: joints against a wall in raked courses, where it can't tell (see job.py)")
    for line in limits:
        print(f"  {line}")


def spent(results):
    totals = collections.Counter()
    for r in results:
        totals.update(r.spent)
    return "minutes of processor time: " + ", ".join(f"{name} {seconds / 60:.1f}" for name, seconds in totals.most_common())


def print_problems(problems):
    print(f"\n{len(problems)} problems" + (":" if problems else ""))
    for problem in problems[:200]:
        print(f"  {problem}")
    if len(problems) > 200:
        print(f"  ... and {len(problems) - 200} more")

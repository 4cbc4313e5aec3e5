using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Smoothing, arrises and coats, when the last glue-up that holds a part is done.</summary>
internal static class Finishing
{
    /// <summary>The operation that readies a face for finish.</summary>
    public const string Smooth = "smooth";

    /// <summary>The operation of a coat that is wiped on.</summary>
    public const string Wiped = "finish coat, wiped";

    /// <summary>The operation of a coat that is brushed on.</summary>
    public const string Brushed = "finish coat, brushed";

    /// <summary>The operation that keys a coat for the next one.</summary>
    public const string RubDown = "rub down between coats";

    private const string Arrises = "ease arrises";

    // A coat of the evening must not get too cold before the morning, however soon it could be coated again.
    private static readonly Duration Night = Duration.FromHours(12);

    /// <summary>
    /// Writes the tasks of all finishes from the wood outward: stain, oil, shellac, film, wax, whatever the order written;
    /// those of one layer as written.
    /// </summary>
    public static void Add(Draft draft)
    {
        var coated = new Dictionary<string, (int Coat, Finish Finish)>(StringComparer.Ordinal);
        foreach (var (work, finish) in Layers(draft))
        {
            var ready = new List<int>();
            foreach (var name in work.On.Where(name => !coated.ContainsKey(name)))
            {
                ready.AddRange(MakeReady(draft, name, [.. work.On.Where(other => other != name)]));
            }

            var last = Coats(draft, work, finish, ready, [.. coated.Where(one => work.On.Any(name => Shares(draft.Job, name, one.Key))).Select(one => one.Value)]);
            foreach (var name in work.On)
            {
                coated[name] = (last, finish);
            }
        }

        SmoothUnfinished(draft);
        foreach (var (coat, finish) in coated.Values.Distinct())
        {
            draft.ClosingWaits.Add(new ClosingWait(coat, new Wait(finish.LightUse, $"{finish.Name} hardens until it may be handled and used lightly", HoldsFloor: true) { Sets = draft.SettingOf(finish) }));
        }
    }

    private static List<(FinishWork Work, Finish Finish)> Layers(Draft draft)
    {
        var written = draft.Job.Finishes.Select(work => (Work: work, Finish: draft.Waits.TryFindFinish(work.Finish, out var found)
            ? found
            : throw new ArgumentException($"'{work.Finish}' is not a finish of the table"))).ToList();
        for (var at = 0; at < written.Count; at++)
        {
            var (work, finish) = written[at];
            var moved = written.Skip(at + 1).FirstOrDefault(later => later.Finish.Layer < finish.Layer && work.On.Any(name => later.Work.On.Any(other => Shares(draft.Job, name, other))));
            if (moved.Finish is not null)
            {
                draft.Remarks.Add(new Remark(
                    RemarkKind.FinishOrder,
                    work.On[0],
                    $"{finish.Name} is written before {moved.Finish.Name} on {string.Join(", ", work.On)}, and does not hold under it",
                    $"the plan puts {moved.Finish.Name} on first; write them in that order"));
            }
        }

        return [.. written.OrderBy(one => one.Finish.Layer)];
    }

    private static bool Shares(Job job, string name, string other) => name == other || Holders.PartsOf(name, job).Intersect(Holders.PartsOf(other, job)).Any();

    /// <summary>
    /// The parts under a name that get finish: those of which a surface shows; all of them when none says so.
    /// </summary>
    public static IReadOnlyList<Part> ShownParts(Job job, string name)
    {
        var parts = Holders.PartsOf(name, job);
        return parts.Any(part => part.Shows.Count > 0) ? [.. parts.Where(part => part.Shows.Count > 0)] : parts;
    }

    /// <summary>
    /// The area of a part that gets finish: the surfaces that show; its whole surface when none is named.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="withInside">Whether inside faces count: they are smoothed before the glue-up, and coated with the rest.</param>
    public static Area ShownArea(Part part, bool withInside)
    {
        var one = part.Shows.Count == 0
            ? part.SurfaceArea
            : part.Shows.Aggregate(Area.Zero, (sum, surface) => sum + surface switch
            {
                PartSurface.Face or PartSurface.Under => part.FaceArea,
                PartSurface.Inside => withInside ? part.FaceArea : Area.Zero,
                PartSurface.Edge => EdgeArea(part),
                _ => throw new System.Diagnostics.UnreachableException(),
            });
        return one * part.Count;
    }

    /// <summary>
    /// The area of a part that is smoothed: where it shows or is written smoothed, and nothing less is written; its whole
    /// surface but for what is written less, when nothing is said to show.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="isAllShown">Whether it shows all round where nothing is said.</param>
    /// <param name="withInside">Whether inside faces count: they are smoothed before the glue-up.</param>
    private static Area SmoothedArea(Part part, bool isAllShown, bool withInside)
    {
        if (isAllShown && part.Shows.Count == 0)
        {
            var left = new[] { part.Surfaces.TryGetValue(PartSurface.Face, out var face) ? face : SurfaceStandard.Smoothed, FaceStandards.WrittenOfFaceTwo(part) ?? SurfaceStandard.Smoothed }
                .Count(standard => standard < SurfaceStandard.Smoothed);
            var edges = part.Surfaces.TryGetValue(PartSurface.Edge, out var edge) && edge < SurfaceStandard.Smoothed ? EdgeArea(part) : Area.Zero;
            return (part.SurfaceArea - (part.FaceArea * left) - edges) * part.Count;
        }

        return Enum.GetValues<PartSurface>()
            .Where(surface => FaceStandards.IsSmoothed(part, surface) && (withInside || surface != PartSurface.Inside))
            .Aggregate(Area.Zero, (sum, surface) => sum + (surface == PartSurface.Edge ? EdgeArea(part) : part.FaceArea)) * part.Count;
    }

    private static Area EdgeArea(Part part) => part.Length * part.Thickness * 2;

    /// <summary>Whether a task is a coat of a finish that leaves a film.</summary>
    public static bool LastCoatIsFilm(Draft draft, int id) =>
        draft.Waits.Finishes.Any(finish => finish.IsFilm && draft.Tasks[id].Name.StartsWith(finish.Name + ", coat", StringComparison.Ordinal));

    private static IReadOnlyList<int> MakeReady(Draft draft, string name, IReadOnlyList<string> together)
    {
        var outermost = Holders.OutermostOf(name, draft.Job);
        var shown = ShownParts(draft.Job, name);
        var parts = Holders.PartsOf(name, draft.Job)
            .Where(part => (shown.Contains(part) || FaceStandards.IsWrittenSmooth(part)) && draft.IsFirst(Smooth, part.Name))
            .ToList();
        var last = draft.LastOf(outermost);
        if (parts.Count == 0)
        {
            return last;
        }

        var smoothed = Smoothed(draft, name, parts, last, part => SmoothedArea(part, shown.Contains(part), withInside: outermost == part.Name));
        if (!ReferenceEquals(smoothed, last))
        {
            SmoothLate(draft, smoothed[0], [.. together.Select(other => Holders.OutermostOf(other, draft.Job)).Where(other => other != outermost).Distinct(StringComparer.Ordinal)]);
        }

        last = smoothed;
        var eased = parts.Where(shown.Contains).ToList();
        if (eased.Count == 0)
        {
            return last;
        }

        var arrises = eased.Aggregate(Length.Zero, (sum, part) => sum + (part.Length * (4 * part.Count)));
        return [After(draft, name, eased, last, Arrises, "ease the arrises: " + name, draft.Operations[Arrises].Unit.Of(arrises), "a sharp arris sheds its finish")];
    }

    /// <summary>
    /// A smooth face takes knocks, dust and damp: it is not made weeks before its coat. What gets the same coat is jointed
    /// first, and tried dry where it is glued up; while that glue sets there is time for smoothing (common practice, no source).
    /// </summary>
    private static void SmoothLate(Draft draft, int smoothing, IReadOnlyList<string> others)
    {
        foreach (var other in others)
        {
            var dryFits = draft.Tasks.Where(task => GlueUps.IsDryFitOf(task, other)).Select(task => task.Id).ToList();
            draft.Before(dryFits.Count > 0 ? dryFits : draft.LastOf(other), smoothing, $"{other} gets its coat with it, and no smoothed face waits for weeks");
        }
    }

    /// <summary>Smooths what is written smoothed and gets no finish, when the last glue-up that holds it is done.</summary>
    private static void SmoothUnfinished(Draft draft)
    {
        var left = draft.Job.Parts.Where(part => FaceStandards.IsWrittenSmooth(part) && draft.IsFirst(Smooth, part.Name)).ToList();
        foreach (var held in left.GroupBy(part => Holders.OutermostOf(part.Name, draft.Job)))
        {
            List<Part> parts = [.. held];
            var last = draft.LastOf(held.Key);
            var smoothed = Smoothed(draft, held.Key, parts, last, part => SmoothedArea(part, isAllShown: false, withInside: held.Key == part.Name));
            draft.CameTo(draft.PiecesOf(held.Key), smoothed);
        }
    }

    private static IReadOnlyList<int> Smoothed(Draft draft, string name, List<Part> parts, IReadOnlyList<int> last, Func<Part, Area> areaOf)
    {
        var area = parts.Aggregate(Area.Zero, (sum, part) => sum + areaOf(part));
        return area > Area.Zero
            ? [After(draft, name, parts, last, Smooth, "smooth: " + name, draft.Operations[Smooth].Unit.Of(area), "glue and plane marks show through any finish")]
            : last;
    }

    private static int After(Draft draft, string name, List<Part> parts, IReadOnlyList<int> before, string operation, string title, double quantity, string reason)
    {
        var id = draft.Add(new TaskSketch
        {
            Stage = Stage.Finish,
            Operation = operation,
            Name = title,
            Quantity = quantity,
            Covariates = Properties.Of(parts.Select(part => part.Species)),
            Parts = [name],
        });
        draft.Before(before, id, reason);
        return id;
    }

    private static int Coats(Draft draft, FinishWork work, Finish finish, List<int> ready, IReadOnlyList<(int Coat, Finish Finish)> under)
    {
        var operation = finish.IsBrushed ? Brushed : Wiped;
        var area = work.On.SelectMany(name => ShownParts(draft.Job, name)).Distinct().Aggregate(Area.Zero, (sum, part) => sum + ShownArea(part, withInside: true));
        var on = string.Join(", ", work.On);
        var sketch = new TaskSketch
        {
            Stage = Stage.Finish,
            Operation = operation,
            Name = finish.Name,
            Quantity = draft.Operations[operation].Unit.Of(area),
            Parts = work.On,
            DustFreeAfter = finish.DustFree,
            Sets = draft.SettingOf(finish),
            SetsFor = Duration.Max(finish.Recoat, Night),
            Floor = work.On.Aggregate(Area.Zero, (sum, name) => sum + Footprint.Of(name, draft.Job)),
            Cautions = finish.LeavesOilyRags ? ["oily rags"] : [],
            Note = "no dust in the shop until it is dry; the container's own sheet goes before these times",
        };
        var last = -1;
        for (var coat = 1; coat <= work.Coats; coat++)
        {
            var between = last;
            if (last >= 0 && finish.IsFilm)
            {
                between = draft.Add(sketch with { Operation = RubDown, Name = FormattableString.Invariant($"rub down before coat {coat}: {on}"), Quantity = draft.Operations[RubDown].Unit.Of(area), Cautions = [], DustFreeAfter = Duration.Zero, Sets = null, Floor = Area.Zero, Note = "" });
                draft.Before(last, between, "a film is rubbed down when it is hard", Recoat(draft, finish));
            }

            // Its name does not say how many there are: with one more it is the same coat, and what is logged of it stays its own.
            var id = draft.Add(sketch with
            {
                Name = FormattableString.Invariant($"{finish.Name}, coat {coat}: {on}"),
                Note = work.Coats == 1 ? sketch.Note : FormattableString.Invariant($"coat {coat} of {work.Coats}; {sketch.Note}"),
            });
            draft.Before(ready, id, "all dusty work ends before a coat");
            if (between >= 0)
            {
                draft.Before(between, id, "the coat before must be dry", between == last ? Recoat(draft, finish) : null);
            }

            foreach (var (coatUnder, finishUnder) in coat == 1 ? under.Distinct() : [])
            {
                draft.Before(coatUnder, id, "the finish beneath must be dry", Recoat(draft, finishUnder));
            }

            ready = [];
            last = id;
        }

        return last;
    }

    private static Wait Recoat(Draft draft, Finish finish) => new(finish.Recoat, $"{finish.Name} dries until the next coat", HoldsFloor: true) { Sets = draft.SettingOf(finish) };
}

using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Finds what carries openings at a height: the first lintel of the catalog that serves and fits, or a formed beam.</summary>
internal sealed class LintelFitter(LintelSite site, Length thickness, LayoutRules rules)
{
    /// <summary>A formed beam is about a tenth of its span high: a first guess for the engineer. Common practice, no source.</summary>
    private const int SpanToHeight = 10;

    private readonly LintelEnds _ends = new(rules);

    /// <summary>Whether a lintel of the catalog spans openings, whether or not it finds room over them.</summary>
    public bool IsServed(ImmutableArray<OpeningLayout> carried) => LintelChoice.Serving(Clear(carried), thickness, rules).Any();

    /// <summary>The bearing that the first lintel that spans openings asks for, or a formed beam.</summary>
    public Length Bearing(ImmutableArray<OpeningLayout> carried) =>
        LintelChoice.BearingOf(LintelChoice.Serving(Clear(carried), thickness, rules).FirstOrDefault(), rules);

    /// <summary>The widest stretch between supports; a pier that is shorter than a bearing carries nothing.</summary>
    public Length Clear(ImmutableArray<OpeningLayout> carried)
    {
        var (clear, from) = (Length.Zero, carried[0].Placed.Left);
        for (var i = 0; i < carried.Length; i++)
        {
            clear = Length.Max(clear, carried[i].Placed.Right - from);
            if (i + 1 < carried.Length && carried[i + 1].Placed.Left - carried[i].Placed.Right >= rules.LintelBearing)
            {
                from = carried[i + 1].Placed.Left;
            }
        }

        return clear;
    }

    /// <summary>The first lintel of the catalog that fits with its bearings and lets a bond beam's bars pass, else the first that fits at all.</summary>
    /// <param name="carried">The openings, from left to right.</param>
    /// <param name="underside">Where it lies.</param>
    /// <param name="limits">How far other lintels let it reach.</param>
    public LintelFit? OfCatalog(ImmutableArray<OpeningLayout> carried, Length underside, Interval limits)
    {
        var fits = LintelChoice.Serving(Clear(carried), thickness, rules)
            .Select(lintel => Fit(carried, lintel, new Interval(underside, underside + lintel.Height), limits))
            .OfType<LintelFit>()
            .ToList();
        return fits.Find(fit => HasBearings(fit) && !site.StopsBeam(fit)) ?? fits.Find(HasBearings) ?? fits.FirstOrDefault();
    }

    /// <summary>What carries openings: a lintel of the catalog, or a formed beam where none fits or where it alone lets a bond beam's bars pass.</summary>
    /// <param name="carried">The openings, from left to right.</param>
    /// <param name="underside">Where it lies.</param>
    /// <param name="limits">How far other lintels let it reach.</param>
    public LintelFit? Best(ImmutableArray<OpeningLayout> carried, Length underside, Interval limits)
    {
        var bought = OfCatalog(carried, underside, limits);
        var formed = bought is null || site.StopsBeam(bought) ? Formed(carried, underside, limits) : null;
        return bought is null || (formed is not null && !site.StopsBeam(formed)) ? formed ?? bought : bought;
    }

    /// <summary>
    /// The lowest formed beam of the height wanted, else the highest there is room for, no lower than a piece may be; it ends
    /// with a course.
    /// </summary>
    /// <param name="carried">The openings, from left to right.</param>
    /// <param name="underside">Where it lies.</param>
    /// <param name="limits">How far other lintels let it reach.</param>
    public LintelFit? Formed(ImmutableArray<OpeningLayout> carried, Length underside, Interval limits)
    {
        var wanted = ((Clear(carried) - rules.Catalog.HeadJoint.Nominal) / SpanToHeight) - rules.Catalog.BedJoint.Nominal;
        var least = rules.Catalog.LeastRip ?? (rules.Catalog.UnitHeight / 2);
        var fits = site.Courses.Where(course => course.To - underside >= least)
            .Select(course => Fit(carried, null, new Interval(underside, course.To), limits))
            .TakeWhile(fit => fit is not null)
            .OfType<LintelFit>()
            .ToList();
        return fits.Find(fit => fit.Heights.Size >= wanted) ?? fits.LastOrDefault();
    }

    public bool HasBearings(LintelFit fit) =>
        Length.Min(fit.BearingLeft, fit.BearingRight) >= LintelChoice.BearingOf(fit.Product, rules);

    private LintelFit? Fit(ImmutableArray<OpeningLayout> carried, LintelProduct? lintel, Interval heights, Interval limits)
    {
        if (LintelRows.Of(heights.From, heights.To, site.Courses, rules.Catalog) is not { } rows)
        {
            return null;
        }

        var over = LintelFit.OverOf(carried);
        var rects = carried.Select(opening => opening.Placed).ToList();
        var free = site.FreeRun(over, rows, rects);
        var reach = new Interval(Length.Max(free.From, limits.From), Length.Min(free.To, limits.To));
        return _ends.Of(lintel, over, reach) is { } run && run.From <= over.From && run.To >= over.To && site.IsWhole(run, rows, rects)
            ? new LintelFit(carried, lintel, run, heights, rows)
            : null;
    }
}

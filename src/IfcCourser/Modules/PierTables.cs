using System.Collections.Concurrent;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>The lengths of piers that can be bonded, worked out once for all walls of a run. For use by several threads at once.</summary>
internal sealed class PierTables
{
    private readonly ConcurrentDictionary<Key, (PierLengths Possible, PierLengths Nominal)> _lengths = new();

    /// <summary>The lengths that joints of any width allow, and those to aim for.</summary>
    /// <param name="rules">Unit, least piece, overlap, joints.</param>
    /// <param name="shift">How far the second course starts behind the first.</param>
    public (PierLengths Possible, PierLengths Nominal) Of(LayoutRules rules, Length shift) => _lengths.GetOrAdd(
        new Key(rules.Catalog.UnitLength, rules.Catalog.HeadJoint, rules.MinPiece, rules.MinOverlap, shift),
        static (key, rules) => (PierLengths.Possible(rules, key.Shift), PierLengths.Nominal(rules, key.Shift)),
        rules);

    private readonly record struct Key(Length Unit, LengthRange Joint, Length MinPiece, Length MinOverlap, Length Shift);
}

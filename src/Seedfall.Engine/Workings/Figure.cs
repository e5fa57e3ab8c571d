using Seedfall.Engine.Units;

namespace Seedfall.Engine.Workings;

/// <summary>One number as a page shows it: what it is, its value in the canonical unit of its kind, and its working.</summary>
/// <param name="Id">Stable dotted name, for example <c>seed.front.bulk</c>; unique within one plan.</param>
/// <param name="Label">What the number is, in the trade's words.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Value">Value in the canonical unit of <paramref name="Kind"/>; finite.</param>
/// <param name="Working">The working behind it.</param>
public sealed record Figure(string Id, string Label, QuantityKind Kind, double Value, Working Working)
{
    /// <summary>The value as a date, for <see cref="QuantityKind.Date"/> figures; throws for other kinds.</summary>
    public DateOnly AsDate() => Kind == QuantityKind.Date
        ? DateOnly.FromDayNumber((int)Value)
        : throw new InvalidOperationException($"figure {Id} is a {Kind}, not a date");

    /// <summary>Value in the canonical unit; finite.</summary>
    public double Value { get; init; } = Finite.Require(Value, Kind.ToString());
}

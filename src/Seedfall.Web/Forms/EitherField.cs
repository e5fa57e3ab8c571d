using Seedfall.Engine.Workings;

namespace Seedfall.Web.Forms;

/// <summary>A quantity of one of two kinds, as the chosen unit says: one box, one list of units, never two answers.</summary>
/// <param name="First">The kind shown before a unit is chosen.</param>
/// <param name="Second">The other kind; its unit keys are none of the first's.</param>
/// <param name="FromFirst">The answer of the first kind.</param>
/// <param name="FromSecond">The answer of the second kind.</param>
/// <param name="InFirst">The first kind of an answer; null where it is of the second.</param>
/// <param name="InSecond">The second kind of an answer; null where it is of the first.</param>
public sealed record EitherField<TFirst, TSecond, T>(
    QuantityField<TFirst> First, QuantityField<TSecond> Second, Func<TFirst, T> FromFirst, Func<TSecond, T> FromSecond, Func<T, TFirst?> InFirst, Func<T, TSecond?> InSecond)
    : QuantityField(First.Name, First.Label)
    where TFirst : struct, IComparable<TFirst>
    where TSecond : struct, IComparable<TSecond>
    where T : struct
{
    public override IReadOnlyList<Option> Units => [.. First.Units.Concat(Second.Units).DistinctBy(u => u.Value)];

    public override string UsualUnit(UnitSystem system) => First.UsualUnit(system);

    public T? Read(Entries entries) => Second.Choices.Any(c => c.Key == entries.Text(UnitName))
        ? (Second with { Required = Required }).Read(entries) is { } second ? FromSecond(second) : null
        : (First with { Required = Required }).Read(entries) is { } first ? FromFirst(first) : null;

    /// <summary>The answer in the unit it was plainly given in, see <see cref="QuantityField{T}.Fill"/>.</summary>
    /// <param name="entries">The form.</param>
    /// <param name="value">The answer; null leaves the box blank.</param>
    /// <param name="second">True where a blank box is to offer the second kind's unit.</param>
    public void Fill(Entries entries, T? value, bool second = false)
    {
        if (value is { } v ? InSecond(v) is not null : second)
        {
            Second.Fill(entries, value is { } w ? InSecond(w) : null);
        }
        else
        {
            First.Fill(entries, value is { } w ? InFirst(w) : null);
        }
    }
}

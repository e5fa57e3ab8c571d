using Seedfall.Engine.Workings;

namespace Seedfall.Web.Forms;

/// <summary>A number with a choice of units beside it, posted as NAME and NAME.unit.</summary>
public abstract record QuantityField(string Name, string Label) : Field(Name, Label)
{
    public string UnitName => Name + ".unit";

    public abstract IReadOnlyList<Option> Units { get; }

    /// <summary>The unit shown before one is chosen.</summary>
    public abstract string UsualUnit(UnitSystem system);
}

/// <summary>A quantity of one kind.</summary>
/// <param name="Least">Least value allowed.</param>
/// <param name="Most">Largest value allowed.</param>
public sealed record QuantityField<T>(string Name, string Label, IReadOnlyList<UnitChoice<T>> Choices, T Least, T Most) : QuantityField(Name, Label)
    where T : struct, IComparable<T>
{
    public override IReadOnlyList<Option> Units => [.. Choices.Select(c => new Option(c.Key, c.Text))];

    /// <summary>True where zero itself makes no sense.</summary>
    public bool AboveLeast { get; init; }

    public override string UsualUnit(UnitSystem system) => Usual(system).Key;

    public T? Read(Entries entries)
    {
        var text = entries.Text(Name);
        if (text.Length == 0)
        {
            Missing(entries, "a number");
            return null;
        }

        var unit = Choices.FirstOrDefault(c => c.Key == entries.Text(UnitName)) ?? Usual(entries.System);
        if (NumberText.Parse(text) is not { } number)
        {
            entries.Wrong(Name, $"{Label}: a number of {unit.Text} is needed, not “{text}”.");
            return null;
        }

        var value = unit.From(number);
        var tooSmall = AboveLeast ? value.CompareTo(Least) <= 0 : value.CompareTo(Least) < 0;
        if (tooSmall || value.CompareTo(Most) > 0)
        {
            entries.Wrong(Name, $"{Label}: {Range(unit)} is needed, not {NumberText.Write(number)}.");
            return null;
        }

        return value;
    }

    /// <summary>
    /// The value in the viewer's usual unit, or in the one it was plainly typed in: saving what is shown gives the same
    /// value to the last bit. The unit alone where there is no value.
    /// </summary>
    public void Fill(Entries entries, T? value)
    {
        var unit = value is { } v ? Plainest(v, Usual(entries.System)) : Usual(entries.System);
        entries.Put(Name, value is { } w ? Text(unit, w) : null);
        entries.Put(UnitName, unit.Key);
    }

    private UnitChoice<T> Plainest(T value, UnitChoice<T> usual)
    {
        var exact = Choices.Where(c => NumberText.Parse(Text(c, value)) is { } back && c.From(back).Equals(value)).OrderBy(c => Text(c, value).Length).ToList();
        return exact.Count == 0 || (exact.Contains(usual) && Text(usual, value).Length <= Text(exact[0], value).Length + 2) ? usual : exact[0];
    }

    private static string Text(UnitChoice<T> unit, T value) => NumberText.Write(unit.In(value));

    private string Range(UnitChoice<T> unit)
    {
        // Degrees west and south run the other way round.
        var (a, b) = (unit.In(Least), unit.In(Most));
        var (low, high) = (NumberText.Write(Math.Min(a, b)), NumberText.Write(Math.Max(a, b)));
        return AboveLeast ? $"more than {low} and at most {high} {unit.Text}" : $"a number from {low} to {high} {unit.Text}";
    }

    private UnitChoice<T> Usual(UnitSystem system) => Choices.First(c => c.System == system);
}

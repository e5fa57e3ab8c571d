using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Supply;
using Seedfall.Web.Features.Coverage;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>The sprinkler sets: heads that run together.</summary>
internal sealed class SetsLeaf() : ListLeaf<SprinklerSet>("sets", "Sprinkler sets", "How fast a set wets the ground gives the minutes of every round.")
{
    private static readonly TextField Name = new("set", "Name of the set") { Required = true, Longest = 60, Hint = "Heads that run together, or one hose-end sprinkler." };
    private static readonly ChoiceField<SprinklerKind> Kind = new("kind", "Kind of sprinkler", Answers.Sprinklers);
    private static readonly QuantityField<PrecipitationRate> Rate = new("rate", "Precipitation rate, if known", UnitChoices.Precipitation, PrecipitationRate.FromMillimetersPerHour(0.0), PrecipitationRate.FromMillimetersPerHour(500.0)) { AboveLeast = true };
    private static readonly TextField Cans = new("cans", "Depth in each catch can") { Longest = 400, Hint = "Set out straight-sided cans, run the set, measure each, for example 0.21 0.18 0.25 0.12." };
    private static readonly ChoiceField<char> CanUnit = new("cans.unit", "Measured in", [('i', "in", "in"), ('m', "mm", "mm")]) { Blank = null };
    private static readonly NumberField Minutes = new("minutes", "Minutes it ran", 1.0, 600.0, "min");
    private static readonly QuantityField<FlowRate> Flow = new("setflow", "What the set draws, if known", UnitChoices.Flow, FlowRate.Zero, FlowRate.FromLitersPerMinute(2000.0)) { AboveLeast = true };
    private static readonly NumberField Positions = new("positions", "Positions it is moved through by hand", 1.0, 50.0) { Whole = true, Hint = "1 where it covers its patches from one place." };
    private static readonly QuantityField<Length> HoseLength = new("hose", "Length of hose from the tap", UnitChoices.Distance, Length.Zero, Length.FromMeters(500.0));
    private static readonly QuantityField<Length> Bore = new("bore", "Inner diameter of the hose", UnitChoices.Bore, Length.Zero, Length.FromMeters(0.2)) { AboveLeast = true, Hint = "Printed on it: 1/2, 5/8 or 3/4 in." };
    private static readonly QuantityField<FlowRate> Rated = new("rated", "Rated flow, all its nozzles together", UnitChoices.Flow, FlowRate.Zero, FlowRate.FromLitersPerMinute(2000.0)) { AboveLeast = true, Hint = "From the package or the nozzle chart." };
    private static readonly QuantityField<Pressure> RatedAt = new("ratedat", "At a pressure of", UnitChoices.Pressure, Pressure.Zero, Pressure.FromKilopascals(2000.0)) { AboveLeast = true };

    public override string Each => "set";

    private static ChoiceField<int> Tap(Lawn lawn) => Listed("tap", "Tap it stands on", (lawn.Water?.OtherTaps ?? []).Select(t => t.Name), "The first tap");

    private static ChoiceField<int> Timer(Lawn lawn) => Listed("settimer", "Timer that runs it", (lawn.Water?.Timers ?? []).Select(t => t.Name), "None of those described");

    private static ChoiceField<int> Listed(string name, string label, IEnumerable<string> names, string blank) => new(name, label, [.. names.Select((n, i) => (i, n.Trim(), n))]) { Blank = blank };

    private static TicksField<string> Wets(Lawn lawn) => new("wets", "Patches it wets", [.. lawn.Patches.Select(p => (p.Id, p.Id, p.Name))]) { Required = true };

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
    [
        new("The set", [Name, Wets(lawn), Kind, Positions]),
        new("By catch cans", [Cans, CanUnit, Minutes]) { Hint = "The best answer: it also shows how evenly it falls." },
        new("Or by its figures", [Rate, Flow]),
        .. Hangs(lawn) is { Count: > 0 } hangs ? [new FieldGroup("Tap and timer", hangs)] : Array.Empty<FieldGroup>(),
        new("Hose and nozzle", [HoseLength, Bore, Rated, RatedAt]) { Folded = true, Hint = "A long thin hose eats the pressure: with the tap’s pressure this tells what is left at the sprinkler." },
    ];

    private static IReadOnlyList<Field> Hangs(Lawn lawn) =>
        [.. lawn.Water?.OtherTaps.Count > 0 ? [Tap(lawn)] : Array.Empty<Field>(), .. lawn.Water?.Timers.Count > 0 ? [Timer(lawn)] : Array.Empty<Field>()];

    protected override IReadOnlyList<SprinklerSet> Items(Lawn lawn) => lawn.Water?.Sets ?? [];

    protected override Lawn With(Lawn lawn, IReadOnlyList<SprinklerSet> items) => lawn with { Water = (lawn.Water ?? new WaterSupply()) with { Sets = items } };

    protected override string Gist(SprinklerSet item, Lawn lawn, UnitSystem system)
    {
        var kind = item.Kind == SprinklerKind.Unknown ? "" : $", {Answers.Sprinklers.Words(item.Kind).ToLowerInvariant()}";
        var rate = item.Cans is { } cans
            ? $", {CanWords.Gist(cans, system)}"
            : item.Rate is { } r ? $", {FigureText.Show(QuantityKind.PrecipitationRate, r.MillimetersPerHour, system)}" : "";
        return item.Name + kind + rate + (item.Tap is { } tap ? $", on {tap}" : "") + (item.Timer is { } timer ? $", by {timer}" : "");
    }

    protected override void FillItem(SprinklerSet? before, Lawn lawn, Entries entries)
    {
        Name.Fill(entries, before?.Name);
        Wets(lawn).Fill(entries, before?.PatchIds ?? (lawn.Patches.Count == 1 ? [lawn.Patches[0].Id] : []));
        Kind.Fill(entries, before is null or { Kind: SprinklerKind.Unknown } ? null : before.Kind);
        Rate.Fill(entries, before?.Rate);
        FillCans(before?.Cans, entries);
        Minutes.Fill(entries, before?.Cans?.Minutes);
        Flow.Fill(entries, before?.Flow);
        Positions.Fill(entries, (double)(before?.Positions ?? 1));
        HoseLength.Fill(entries, before?.Hose?.Length);
        Bore.Fill(entries, before?.Hose?.Bore);
        Rated.Fill(entries, before?.Nozzle?.Flow);
        RatedAt.Fill(entries, before?.Nozzle?.At);
        Tap(lawn).Fill(entries, Place(lawn.Water?.OtherTaps.Select(t => t.Name), before?.Tap));
        Timer(lawn).Fill(entries, Place(lawn.Water?.Timers.Select(t => t.Name), before?.Timer));
    }

    protected override SprinklerSet? ReadItem(SprinklerSet? before, Lawn lawn, Entries entries)
    {
        var name = Name.Read(entries);
        if (name is not null && Items(lawn).Any(s => !ReferenceEquals(s, before) && string.Equals(s.Name, name, StringComparison.OrdinalIgnoreCase)))
        {
            entries.Wrong(Name.Name, $"{Name.Label}: another set is already called “{name}”.");
        }

        var set = new SprinklerSet
        {
            Name = name ?? "",
            PatchIds = Wets(lawn).Read(entries, before?.PatchIds),
            Kind = Kind.Read(entries) ?? SprinklerKind.Unknown,
            Rate = Rate.Read(entries),
            Cans = ReadCans(entries),
            Flow = Flow.Read(entries),
            Positions = Positions.ReadWhole(entries) ?? 1,
            Hose = Both(HoseLength, HoseLength.Read(entries), Bore, Bore.Read(entries), "The hose’s length and its inner diameter go together.", entries) is var (length, bore) ? new HoseRun(length, bore) : null,
            Nozzle = Both(Rated, Rated.Read(entries), RatedAt, RatedAt.Read(entries), "A rated flow goes with the pressure it is rated at.", entries) is var (flow, at) ? new NozzleRating(flow, at) : null,
            Tap = Tap(lawn).Read(entries) is { } tap ? lawn.Water!.OtherTaps[tap].Name : null,
            Timer = Timer(lawn).Read(entries) is { } timer ? lawn.Water!.Timers[timer].Name : null,
            Heads = before?.Heads ?? [],
        };
        return entries.Sound ? set : null;
    }

    private static int? Place(IEnumerable<string>? names, string? name) => names?.ToList().IndexOf(name ?? "") is { } at and >= 0 ? at : null;

    /// <summary>Two answers that go together; null where both are blank or one is missing, which is noted.</summary>
    private static (TFirst First, TSecond Second)? Both<TFirst, TSecond>(Field one, TFirst? first, Field other, TSecond? second, string why, Entries entries)
        where TFirst : struct
        where TSecond : struct
    {
        if (first is null != second is null)
        {
            entries.Wrong(first is null ? one.Name : other.Name, why);
        }

        return first is { } f && second is { } s ? (f, s) : null;
    }

    /// <summary>In the viewer's unit, or in the one they were measured in where only that gives the same depths back.</summary>
    private static void FillCans(CatchCanTest? cans, Entries entries)
    {
        var (inches, millimeters) = (UnitChoices.Depth[0], UnitChoices.Depth[1]);
        var (usual, other) = entries.System == UnitSystem.Metric ? (millimeters, inches) : (inches, millimeters);
        var unit = cans is not null && !Exact(usual) && Exact(other) ? other : usual;
        CanUnit.Fill(entries, unit == millimeters ? 'm' : 'i');
        Cans.Fill(entries, cans is null ? null : string.Join(' ', cans.Readings.Select(d => NumberText.Write(unit.In(d)))));

        bool Exact(UnitChoice<Depth> tried) => cans.Readings.All(d => NumberText.Parse(NumberText.Write(tried.In(d))) is { } back && tried.From(back) == d);
    }

    private static CatchCanTest? ReadCans(Entries entries)
    {
        var words = entries.Text(Cans.Name).Split([' ', ';', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
        {
            return null;
        }

        var most = Depth.FromMillimeters(300.0);
        var readings = new List<Depth>();
        foreach (var word in words)
        {
            if (NumberText.Parse(word) is not { } number || number < 0.0 || Of(number) > most)
            {
                entries.Wrong(Cans.Name, $"{Cans.Label}: depths with blanks between them are needed, none negative; “{word}” is not one.");
                return null;
            }

            readings.Add(Of(number));
        }

        if (readings.Count > 100 || readings.All(r => r == Depth.Zero))
        {
            entries.Wrong(Cans.Name, $"{Cans.Label}: up to 100 depths, not all zero, are needed.");
            return null;
        }

        return (Minutes with { Required = true }).Read(entries) is { } minutes ? new CatchCanTest(readings, minutes) : null;

        Depth Of(double number) => CanUnit.Read(entries) == 'm' ? Depth.FromMillimeters(number) : Depth.FromInches(number);
    }
}

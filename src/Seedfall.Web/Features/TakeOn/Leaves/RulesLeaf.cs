using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>State or province, and what its law asks.</summary>
internal sealed class RulesLeaf() : Leaf("rules", "Rules that bind here", "Nitrogen, phosphorus and license rules are walls: the plan cannot be made to break them.")
{
    private static readonly ChoiceField<SeedingWork> Work = new("work", "What the work is in the law’s eyes", Answers.Works) { Hint = "Some phosphorus rules spare a repair or a new lawn." };
    private static readonly ChoiceField<bool> ForHire = new("hire", "Is somebody paid to apply?", Answers.YesNo) { Hint = "Most states then ask for an applicator’s license." };
    private static readonly ChoiceField<bool> Grazed = new("grazed", "Does stock graze here, or are clippings fed?", Answers.YesNo);

    private static ChoiceField Packs(TradeTables trade) => new PackField(trade);

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) => [new("The rules", [Packs(trade), Work, ForHire, Grazed])];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system)
    {
        List<string> known = [];
        if (lawn.RulePack is { } pack)
        {
            known.Add(pack);
        }

        if (lawn.Work is { } work)
        {
            known.Add(Answers.Works.Words(work));
        }

        if (lawn.AppliedForHire is { } hire)
        {
            known.Add(hire ? "applied for hire" : "not for hire");
        }

        return known.Count == 0 ? [] : [string.Join("; ", known)];
    }

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        entries.Put(PackField.PackName, lawn.RulePack);
        Work.Fill(entries, lawn.Work);
        ForHire.Fill(entries, lawn.AppliedForHire);
        Grazed.Fill(entries, lawn.GrazedOrFed);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var pack = entries.Text(PackField.PackName);
        return lawn with
        {
            RulePack = pack.Length == 0 ? null : pack,
            Work = Work.Read(entries),
            AppliedForHire = ForHire.Read(entries),
            GrazedOrFed = Grazed.Read(entries),
        };
    }

    private sealed record PackField : ChoiceField
    {
        public const string PackName = "pack";

        public PackField(TradeTables trade)
            : base(PackName, "State or province")
        {
            Options = [.. trade.RulePacks.Where(p => p.Id != "general").OrderBy(p => p.Name, StringComparer.Ordinal).Select(p => new Option(p.Id, p.Name))];
            Blank = "None of these: the general rules";
            Hint = "Rules change: a person confirms them with the state before anything is applied.";
        }

        public override IReadOnlyList<Option> Options { get; }
    }
}

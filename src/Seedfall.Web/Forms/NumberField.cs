using System.Globalization;
using Seedfall.Engine.Units;

namespace Seedfall.Web.Forms;

/// <summary>A number in one fixed unit.</summary>
public sealed record NumberField(string Name, string Label, double Least, double Most, string Unit = "") : Field(Name, Label)
{
    /// <summary>True where only whole numbers make sense.</summary>
    public bool Whole { get; init; }

    public double? Read(Entries entries)
    {
        var text = entries.Text(Name);
        if (text.Length == 0)
        {
            Missing(entries, "a number");
            return null;
        }

        if (NumberText.Parse(text) is not { } value)
        {
            entries.Wrong(Name, $"{Label}: a number such as {NumberText.Write(Example)} is needed, not “{text}”.");
            return null;
        }

        if (value < Least || value > Most || (Whole && value != Math.Floor(value)))
        {
            entries.Wrong(Name, $"{Label}: {(Whole ? "a whole number" : "a number")} from {NumberText.Write(Least)} to {NumberText.Write(Most)}{Spaced(Unit)} is needed, not {NumberText.Write(value)}.");
            return null;
        }

        return value;
    }

    public int? ReadWhole(Entries entries) => (int?)Read(entries);

    public decimal? ReadMoney(Entries entries) => Read(entries) is { } value ? NumberText.ParseMoney(entries.Text(Name)) ?? (decimal)value : null;

    /// <summary>For fields typed in percent.</summary>
    public Fraction? ReadShare(Entries entries) => Read(entries) is { } percent ? Fraction.FromPercent(percent) : null;

    public void Fill(Entries entries, double? value) => entries.Put(Name, value is { } v ? NumberText.Write(v) : null);

    public void FillMoney(Entries entries, decimal? value) => entries.Put(Name, value?.ToString("0.00######", CultureInfo.InvariantCulture));

    public void FillShare(Entries entries, Fraction? value) => Fill(entries, value?.Percent);

    private double Example => Math.Clamp(Math.Round(0.5 * (Least + Math.Min(Most, Least + 100.0))), Least, Most);

    private static string Spaced(string unit) => unit.Length == 0 ? "" : " " + unit;
}

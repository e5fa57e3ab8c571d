using System.Globalization;

namespace Seedfall.Web.Forms;

/// <summary>A calendar day, posted as yyyy-MM-dd.</summary>
public sealed record DateField(string Name, string Label) : Field(Name, Label)
{
    public DateOnly? Read(Entries entries)
    {
        var text = entries.Text(Name);
        if (text.Length == 0)
        {
            Missing(entries, "a date");
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) && date.Year is >= 1950 and <= 2150)
        {
            return date;
        }

        entries.Wrong(Name, $"{Label}: a date such as 2026-09-08 is needed, not “{text}”.");
        return null;
    }

    public void Fill(Entries entries, DateOnly? value) => entries.Put(Name, value?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
}

/// <summary>A time of day, posted as HH:mm.</summary>
public sealed record TimeField(string Name, string Label) : Field(Name, Label)
{
    public TimeOnly? Read(Entries entries)
    {
        var text = entries.Text(Name);
        if (text.Length == 0)
        {
            Missing(entries, "a time");
            return null;
        }

        if (TimeOnly.TryParseExact(text, ["HH:mm", "HH:mm:ss", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return time;
        }

        entries.Wrong(Name, $"{Label}: a time such as 05:30 is needed, not “{text}”.");
        return null;
    }

    public void Fill(Entries entries, TimeOnly? value) => entries.Put(Name, value?.ToString("HH:mm", CultureInfo.InvariantCulture));
}

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

    /// <summary>The text as a browser's date field can hold it; blank where it is no date.</summary>
    public string Shown(Entries entries) => DateOnly.TryParseExact(entries.Text(Name), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _) ? entries.Text(Name) : "";

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

    /// <summary>The text as a browser's time field can hold it; blank where it is no time.</summary>
    public string Shown(Entries entries) => TimeOnly.TryParseExact(entries.Text(Name), "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out _) ? entries.Text(Name) : "";

    public void Fill(Entries entries, TimeOnly? value) => entries.Put(Name, value?.ToString("HH:mm", CultureInfo.InvariantCulture));
}

namespace Seedfall.Web.Forms;

/// <summary>One answer offered.</summary>
public sealed record Option(string Value, string Text);

/// <summary>One answer out of several: radios up to six or where all are to be seen, a list beyond.</summary>
public abstract record ChoiceField(string Name, string Label) : Field(Name, Label)
{
    public abstract IReadOnlyList<Option> Options { get; }

    /// <summary>Text of the blank answer; null where one must be chosen.</summary>
    public string? Blank { get; init; } = "Not known";

    /// <summary>True where all answers should be seen at once however many there are.</summary>
    public bool AllShown { get; init; }
}

/// <summary>A choice among named values.</summary>
public sealed record ChoiceField<T>(string Name, string Label, IReadOnlyList<(T Value, string Key, string Text)> Answers) : ChoiceField(Name, Label)
    where T : struct
{
    public override IReadOnlyList<Option> Options => [.. Answers.Select(a => new Option(a.Key, a.Text))];

    public T? Read(Entries entries)
    {
        var key = entries.Text(Name);
        if (key.Length == 0)
        {
            Missing(entries, "an answer");
            return null;
        }

        foreach (var answer in Answers)
        {
            if (answer.Key == key)
            {
                return answer.Value;
            }
        }

        entries.Wrong(Name, $"{Label}: choose one of the answers; “{key}” is not one of them.");
        return null;
    }

    public void Fill(Entries entries, T? value) =>
        entries.Put(Name, value is { } v ? Answers.First(a => EqualityComparer<T>.Default.Equals(a.Value, v)).Key : null);
}

/// <summary>Several answers at once.</summary>
public abstract record TicksField(string Name, string Label) : Field(Name, Label)
{
    public abstract IReadOnlyList<Option> Options { get; }
}

/// <summary>Ticks among named values.</summary>
public sealed record TicksField<T>(string Name, string Label, IReadOnlyList<(T Value, string Key, string Text)> Answers) : TicksField(Name, Label)
    where T : notnull
{
    public override IReadOnlyList<Option> Options => [.. Answers.Select(a => new Option(a.Key, a.Text))];

    /// <summary>What is ticked: first what was ticked before, in its own order, then the rest as offered.</summary>
    public IReadOnlyList<T> Read(Entries entries, IReadOnlyList<T>? before = null)
    {
        var keys = entries.All(Name);
        var ticked = Answers.Where(a => keys.Contains(a.Key)).Select(a => a.Value).ToList();
        List<T> chosen = [.. (before ?? []).Where(ticked.Contains), .. ticked.Where(t => before?.Contains(t) != true)];
        if (chosen.Count == 0)
        {
            Missing(entries, "at least one");
        }

        return chosen;
    }

    public void Fill(Entries entries, IEnumerable<T> values)
    {
        var set = values.ToHashSet();
        entries.PutAll(Name, Answers.Where(a => set.Contains(a.Value)).Select(a => a.Key));
    }
}

/// <summary>Yes, or blank.</summary>
public sealed record TickField(string Name, string Label) : Field(Name, Label)
{
    public bool Read(Entries entries) => entries.Text(Name) == "yes";

    public void Fill(Entries entries, bool value) => entries.Put(Name, value ? "yes" : null);
}

namespace Seedfall.Web.Forms;

/// <summary>One question of a form as the page shows it.</summary>
/// <param name="Name">Name posted by the browser.</param>
/// <param name="Label">The question, in the trade's words.</param>
public abstract record Field(string Name, string Label)
{
    /// <summary>How to find the answer, or what it changes.</summary>
    public string? Hint { get; init; }

    public bool Required { get; init; }

    /// <summary>The element id, which a problem at the top of the page links to.</summary>
    public string ElementId => "f-" + Name.Replace('.', '-');

    /// <summary>Notes a problem where a required field is blank.</summary>
    protected void Missing(Entries entries, string what)
    {
        if (Required)
        {
            entries.Wrong(Name, $"{Label}: {what} is needed.");
        }
    }
}

/// <summary>Questions that belong together.</summary>
/// <param name="Legend">Their common heading.</param>
public sealed record FieldGroup(string Legend, IReadOnlyList<Field> Fields)
{
    public string? Hint { get; init; }

    /// <summary>Shown only while a radio of <see cref="Field.Name"/> <c>Choice</c> has this value: class <c>when-VALUE</c>.</summary>
    public string? When { get; init; }

    /// <summary>Folded away until opened; opened by itself where something inside is filled or wrong.</summary>
    public bool Folded { get; init; }

    /// <summary>Stays folded although something inside is filled in; opened only where something is wrong.</summary>
    public bool Closed { get; init; }

    /// <summary>Shown without its legend, where the heading above already says it.</summary>
    public bool Bare { get; init; }
}

using System.Net;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>What a browser would send of the leaf's form if its button were pressed at once.</summary>
internal static partial class FormFields
{
    public static IEnumerable<(string Name, string Value)> Of(string page)
    {
        var form = LeafForm().Match(page).Value;
        foreach (Match input in Input().Matches(form))
        {
            var (type, name, value) = (Attribute(input.Value, "type"), Attribute(input.Value, "name"), Attribute(input.Value, "value") ?? "");
            if (name is not null && type != "hidden" && (type is not ("checkbox" or "radio") || input.Value.Contains(" checked", StringComparison.Ordinal)))
            {
                yield return (name, value);
            }
        }

        foreach (Match select in Select().Matches(form))
        {
            var options = Option().Matches(select.Value);
            var chosen = options.FirstOrDefault(o => o.Value.Contains(" selected", StringComparison.Ordinal)) ?? options[0];
            yield return (Attribute(select.Value, "name")!, Attribute(chosen.Value, "value") ?? "");
        }
    }

    private static string? Attribute(string tag, string name) =>
        Regex.Match(tag, $"\\s{name}=\"([^\"]*)\"") is { Success: true } found ? WebUtility.HtmlDecode(found.Groups[1].Value) : null;

    [GeneratedRegex("<form[^>]*class=\"leaf\"[\\s\\S]*?</form>")]
    private static partial Regex LeafForm();

    [GeneratedRegex("<input[^>]*>")]
    private static partial Regex Input();

    [GeneratedRegex("<select[\\s\\S]*?</select>")]
    private static partial Regex Select();

    [GeneratedRegex("<option[^>]*>")]
    private static partial Regex Option();
}

using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Planning.Materials;
using static Seedfall.Planning.Tests.Calibration.Spreaders;

namespace Seedfall.Planning.Tests.Calibration;

/// <summary>When two records are of one spreader.</summary>
public sealed class KeptSpreaderTests
{
    private static readonly KeptSpreader Push = With(Run(1, 5.0, 3.0));

    [Fact]
    public void The_same_card_is_the_same_spreader_whatever_was_weighed() =>
        Assert.True(Push.IsSame(With(Run(2, 4.0, 2.0))) && Push.IsSame(With()));

    [Fact]
    public void An_entry_in_common_makes_one_of_two_names() =>
        Assert.True(Push.IsSame(With(Run(1, 5.0, 3.0)) with { Id = "push-2", Name = "other" }));

    [Fact]
    public void Another_name_kind_or_scale_without_an_entry_in_common_is_another()
    {
        Assert.False(Push.IsSame(With(Run(2, 4.0, 2.0)) with { Name = "other" }));
        Assert.False(Push.IsSame(With(Run(2, 4.0, 2.0)) with { Id = "other" }));
        Assert.False(Push.IsSame(With(Run(2, 4.0, 2.0)) with { Kind = SpreaderKind.Drop }));
        Assert.False(Push.IsSame(Push with { Scale = new(0.0, 10.0, 0.5) }));
    }
}

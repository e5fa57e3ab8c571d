using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Lawns;

/// <summary>How a patch's area was taken: exactly one of the known shapes.</summary>
internal sealed class ShapeFormat : SimpleKinds<PatchShape>
{
    public static readonly ShapeFormat One = new();

    private ShapeFormat()
        : base("shape")
    {
        Kind("area", TypedFormat.One, s => s as PatchShape.Typed, s => s, "An area known from elsewhere.");
        Simple();
        Kind("pieces", PiecesFormat.One, s => s as PatchShape.Pieces, s => s, "Shapes added together and taken away.");
        Kind("taped", TapedFormat.One, s => s as PatchShape.Taped, s => s, "Corners by their distances from the ends of a base line.");
        Kind("outline", OutlineFormat.One, s => s as PatchShape.Outline, s => s, "A closed outline in meters east and north.");
    }

    private sealed class TypedFormat : JsonFormat<PatchShape.Typed>
    {
        public static readonly TypedFormat One = new();

        public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out PatchShape.Typed value)
        {
            var read = Quantities.Area.Format.TryRead(at, problems, out var area);
            value = read ? new(area) : null;
            return read;
        }

        public override void Write(Utf8JsonWriter writer, PatchShape.Typed value) => Quantities.Area.Format.Write(writer, value.Area);

        public override JsonObject Schema(SchemaBook book) => Quantities.Area.Format.Schema(book);
    }

    /// <summary>A list of pieces.</summary>
    private sealed class PiecesFormat : JsonFormat<PatchShape.Pieces>
    {
        public static readonly PiecesFormat One = new();

        private static readonly ListFormat<ShapePiece> All = new(PieceFormat.One, 1);

        public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out PatchShape.Pieces value)
        {
            var read = All.TryRead(at, problems, out var pieces);
            value = read ? new(pieces!) : null;
            return read;
        }

        public override void Write(Utf8JsonWriter writer, PatchShape.Pieces value) => All.Write(writer, value.All);

        public override JsonObject Schema(SchemaBook book) => All.Schema(book);
    }

    private sealed class PieceFormat : ObjectFormat<ShapePiece>
    {
        public static readonly PieceFormat One = new();

        private readonly Field<ShapePiece, PatchShape.Simple> _shape;
        private readonly Field<ShapePiece, bool> _away;

        private PieceFormat()
            : base("piece")
        {
            _shape = Required("shape", PieceShapeFormat.One, p => p.Shape, "");
            _away = Usual("takenAway", Scalars.Truth, p => p.TakenAway, false, "True where the piece is no grass.");
        }

        protected override ShapePiece Build(FieldValues v) => new(v.Get(_shape), v.Get(_away));
    }

    private sealed class PieceShapeFormat : SimpleKinds<PatchShape.Simple>
    {
        public static readonly PieceShapeFormat One = new();

        private PieceShapeFormat()
            : base("pieceShape") => Simple();
    }

    private sealed class TapedFormat : ObjectFormat<PatchShape.Taped>
    {
        public static readonly TapedFormat One = new();

        private readonly Field<PatchShape.Taped, Length> _base;
        private readonly Field<PatchShape.Taped, IReadOnlyList<TapedCorner>> _corners;

        private TapedFormat()
            : base("taped")
        {
            _base = Required("base", Quantities.Length.Format, s => s.Base, "Length of the base line from end A to end B.");
            _corners = Required("corners", new ListFormat<TapedCorner>(CornerFormat.One, 3), s => s.Corners, "Corners in order round the edge; an end of the base line is a corner only where it is listed.");
        }

        protected override PatchShape.Taped Build(FieldValues v) => new(v.Get(_base), v.Get(_corners));
    }

    private sealed class CornerFormat : ObjectFormat<TapedCorner>
    {
        public static readonly CornerFormat One = new();

        private readonly Field<TapedCorner, Length> _fromA, _fromB;
        private readonly Field<TapedCorner, BaseSide> _side;

        private CornerFormat()
            : base("tapedCorner")
        {
            _fromA = Required("fromA", Quantities.Length.Format, c => c.FromA, "");
            _fromB = Required("fromB", Quantities.Length.Format, c => c.FromB, "");
            _side = Usual("side", NamesOf<BaseSide>.Format, c => c.Side, BaseSide.Left, "Side of the base line, looking from A to B.");
        }

        protected override TapedCorner Build(FieldValues v) => new(v.Get(_fromA), v.Get(_fromB), v.Get(_side));
    }
}

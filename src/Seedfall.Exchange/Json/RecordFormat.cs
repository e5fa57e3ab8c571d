namespace Seedfall.Exchange.Json;

/// <summary>An object whose fields are added one by one and whose maker is set last.</summary>
internal sealed class RecordFormat<T>(string name) : ObjectFormat<T>(name)
    where T : class
{
    private Func<FieldValues, T>? _make;

    /// <summary>How the record is made from its fields.</summary>
    public RecordFormat<T> Made(Func<FieldValues, T> make)
    {
        _make = make;
        return this;
    }

    protected override T Build(FieldValues values) => _make!(values);
}

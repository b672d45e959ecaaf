using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Sketch.Preview.Views;

namespace Sketch.Preview.Server;

/// <summary>How everything that the page sends and gets is written as JSON.</summary>
internal static class PageJson
{
    private static readonly JsonSerializerOptions Settings = Set(new(JsonSerializerDefaults.Web));

    /// <summary>How a type is written that no handler returns: in a line, a message or a problem.</summary>
    public static JsonTypeInfo<T> Of<T>() => (JsonTypeInfo<T>)Settings.GetTypeInfo(typeof(T));

    /// <summary>Sets options to these records alone.</summary>
    public static JsonSerializerOptions Set(JsonSerializerOptions options)
    {
        options.TypeInfoResolver = PageRecords.Default;
        options.RespectNullableAnnotations = true;
        options.Converters.Add(new WholeText());
        // The answers are never part of HTML, and pictures would become much longer with every < and " escaped.
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        return options;
    }
}

/// <summary>The answer to what needs none.</summary>
internal sealed record Done;

/// <summary>All that the page sends and gets.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(SeeRequest))]
[JsonSerializable(typeof(HoldRequest))]
[JsonSerializable(typeof(HandRequest))]
[JsonSerializable(typeof(SaveRequest))]
[JsonSerializable(typeof(BeginRequest))]
[JsonSerializable(typeof(ForgetRequest))]
[JsonSerializable(typeof(TidyRequest))]
[JsonSerializable(typeof(PlanRequest))]
[JsonSerializable(typeof(KeepRequest))]
[JsonSerializable(typeof(CountRequest))]
[JsonSerializable(typeof(StartRequest))]
[JsonSerializable(typeof(CopyRequest))]
[JsonSerializable(typeof(WrittenFile))]
[JsonSerializable(typeof(PutRequest))]
[JsonSerializable(typeof(PaintRequest))]
[JsonSerializable(typeof(PutWordRequest))]
[JsonSerializable(typeof(GuideView))]
[JsonSerializable(typeof(AdditionsView))]
[JsonSerializable(typeof(EditView))]
[JsonSerializable(typeof(LayoutsView))]
[JsonSerializable(typeof(SamplesView))]
[JsonSerializable(typeof(ProblemAnswer))]
[JsonSerializable(typeof(Done))]
[JsonSerializable(typeof(FileList))]
[JsonSerializable(typeof(OpenedText))]
[JsonSerializable(typeof(StampedText))]
[JsonSerializable(typeof(SavedStamp))]
[JsonSerializable(typeof(OneText))]
[JsonSerializable(typeof(EarlierList))]
[JsonSerializable(typeof(OffersRequest))]
[JsonSerializable(typeof(OffersView))]
[JsonSerializable(typeof(LetteringView))]
[JsonSerializable(typeof(TextView))]
[JsonSerializable(typeof(HoldView))]
[JsonSerializable(typeof(HandView))]
[JsonSerializable(typeof(StashView))]
[JsonSerializable(typeof(RowRequest))]
[JsonSerializable(typeof(RowsView))]
[JsonSerializable(typeof(RowDone))]
[JsonSerializable(typeof(ScanView))]
[JsonSerializable(typeof(VariantsView))]
[JsonSerializable(typeof(OrderList))]
[JsonSerializable(typeof(SizesView))]
[JsonSerializable(typeof(ProgressView))]
[JsonSerializable(typeof(PlanView))]
[JsonSerializable(typeof(PageCount))]
[JsonSerializable(typeof(CountView))]
[JsonSerializable(typeof(Changed))]
[JsonSerializable(typeof(InMemoryOnly))]
internal sealed partial class PageRecords : JsonSerializerContext;

using Sketch;
using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Reports;
using Sketch.Text;

var text = "card \"First light\"\nbase A2, fold left, of white\nfront\n  words: banner 3 x 3/4 \"first light\", of cream\n";
var compiled = Compiler.Compile(new SourceText("first-light.card", text), new MemoryFiles());
FindingsText.Write(Console.Error, compiled.Findings);
if (compiled.Card is { } card)
{
    SizeText.Write(Console.Out, SizeList.Of(card), card.Units.Format());
    File.WriteAllText("first-light.svg", CardDrawing.Draw(card, FaceKind.Front));
}

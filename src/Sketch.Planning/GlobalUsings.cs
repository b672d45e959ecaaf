// The engine has a stage called Layout, which would hide the planner's layouts of sheets.
global using SheetLayout = Sketch.Cutting.Layout;

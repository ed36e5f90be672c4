// Where in the drawing somebody clicked, in the drawing's own units, however large it is shown.
export function listen(drawing, page) {
  drawing.addEventListener('click', (event) => {
    const matrix = drawing.getScreenCTM();
    if (!matrix) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    page.invokeMethodAsync('Clicked', at.x, at.y);
  });
}

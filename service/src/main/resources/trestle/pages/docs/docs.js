/* Starts Swagger UI on the contract that this service answers by. Nothing is fetched from elsewhere. */
'use strict';

const dark = window.matchMedia('(prefers-color-scheme: dark)');
const follow = () => document.documentElement.classList.toggle('dark-mode', dark.matches);
dark.addEventListener('change', follow);
follow();

window.SwaggerUIBundle({
  url: '../openapi.json',
  domNode: document.getElementById('docs'),
  validatorUrl: null,
  deepLinking: true,
  docExpansion: 'list',
  defaultModelsExpandDepth: 0,
  defaultModelExpandDepth: 3,
  displayRequestDuration: true,
});

/* Starts Swagger UI on the contract that this service answers by. Nothing is fetched from elsewhere. */
'use strict';

const dark = window.matchMedia('(prefers-color-scheme: dark)');
const follow = () => document.documentElement.classList.toggle('dark-mode', dark.matches);
dark.addEventListener('change', follow);
follow();

/* A form is filled in with examples; those of options are not meant to be sent all together. */
function withoutOptionExamples(contract) {
  for (const path of Object.values(contract.paths)) {
    for (const operation of Object.values(path)) {
      for (const parameter of operation.parameters ?? []) {
        const option = parameter.$ref ? contract.components.parameters[parameter.$ref.split('/').at(-1)] : parameter;
        if (option.in !== 'path' && option.schema.type !== 'object') {
          delete option.example;
        }
      }
    }
  }
  return contract;
}

fetch('../openapi.json')
  .then((response) => response.json())
  .then((contract) =>
    window.SwaggerUIBundle({
      spec: withoutOptionExamples(contract),
      domNode: document.getElementById('docs'),
      validatorUrl: null,
      deepLinking: true,
      docExpansion: 'list',
      defaultModelsExpandDepth: 0,
      defaultModelExpandDepth: 3,
      displayRequestDuration: true,
      syntaxHighlight: { theme: 'tomorrow-night' },
    }),
  );
